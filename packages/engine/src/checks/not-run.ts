import type { CheckedElement, LimitState } from "./limit-state.ts";

/** Checks the coverage table has and no strength run makes: no verdict answers for them. */
export const notRun: Readonly<Partial<Record<LimitState, readonly CheckedElement[]>>> = {
  "web yielding": ["added beam"],
  "web buckling": ["added beam"],
  "flange bending": ["added beam"],
  "web crippling": ["cross member", "sill", "added beam"],
  "bending with web crippling": ["cross member", "sill"],
  "local moment at a seat": ["sill"],
  "wall plastification": ["added beam", "added post"],
  "side wall yielding": ["added beam"],
  "side wall crippling": ["added beam"],
  shear: ["corner fitting"],
  weld: ["seat", "added post"],
  bolt: ["seat", "made connection"],
  "plate bending": ["added beam", "jamb", "seat", "pad"],
  "bearing on concrete": ["jamb", "seat", "pad"],
  anchor: ["added post"],
};
