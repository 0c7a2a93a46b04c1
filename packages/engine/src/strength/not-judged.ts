import type { CheckedElement, LimitState } from "../checks/limit-state.ts";

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
  weld: ["seat", "tie", "added post", "added beam", "jamb"],
  bolt: ["seat", "tie", "made connection"],
  "plate bending": ["added post", "added beam", "jamb", "seat", "pad"],
  "bearing on concrete": ["added post", "jamb", "seat", "pad"],
  anchor: ["added post"],
};

/** What strength leaves out whatever the scheme, and what that does to the verdict; printed with every answer. */
export const notJudged: readonly string[] = [
  "ties between units, hatches, findings on members beyond a measured thickness of rails, headers, sills and cross members, a system of frames instead of sheet walls: not in the model; the unit needs the engineer",
  "overstrength below walls that do not run down: not run; the building needs the engineer",
  "added beams: what stands on one stands as on the ground; the unit needs the engineer",
  "made connections: by the weld of a stated detail, not of one drawn; bounded, never checked",
  ...[
    "an engineer's own verdict on a mark",
    "thickness of seat packing; level error of posts and seats",
    "diaphragms, collectors, ties between units against sideways loads; flow in floor and roof sheets",
    "wind on a part: glass, doors, boards under an overhang",
    "deflection of cross members, sills and door headers; gaps over openings and glass",
    "anchors and plates under posts",
    "lifting of less than a whole unit, with posts or steel that hang outside it; erection stages",
    "welds of frames, bolts, plates",
    "vibration, fatigue, fire, corrosion",
  ].map((what) => `${what}: no verdict answers for it`),
];
