import type { CheckedElement, LimitState } from "./limit-state.ts";

/** Checks the coverage table has and no strength run makes: no verdict answers for them. */
export const notRun: Readonly<Partial<Record<LimitState, readonly CheckedElement[]>>> = {
  "web crippling": ["cross member", "sill"],
  "bending with web crippling": ["cross member", "sill"],
  "local moment at a seat": ["sill"],
  "wall plastification": ["added post"],
  shear: ["corner fitting"],
  weld: ["added post"],
  "plate bending": ["added beam", "jamb", "pad"],
  "bearing on concrete": ["jamb", "pad"],
};
