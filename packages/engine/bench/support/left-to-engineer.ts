import type { Assessment, Mark } from "@cornerway/schema";
import type { Strength } from "../../src/strength/strength-of.ts";

export type Judged = Extract<Strength, { accepted: true }>;
export type Unit = Judged["units"][number];
export type Reason = Unit["reasons"][number];

/**
 * Why something is left to the engineer. Not implemented: not covered, beyond a safe bound, or no strength stated. An assumption decides:
 * over under some sets of the envelope only, or lifted unless the rigging equalises. A limit he may set: sway, sag, gaps, computed and
 * held against common practice. The code asks: a cap, condition or limit of a code clause. It does not stand: what
 * holds once something undrawn does, or its unit does not work. Load path: the geometry says so without any strength.
 */
export const whys = [
  "not implemented",
  "an assumption decides",
  "the code asks",
  "a limit he may set",
  "it does not stand",
  "load path",
] as const;
export type Why = (typeof whys)[number];

/** The whys of one mark that needs the engineer; those of a mark that takes the verdict of its units' strength are theirs. */
export function whysOfMark(mark: Mark, base: Assessment["marks"], answer: Judged): ReadonlySet<Why> {
  const answered = base.find(({ id }) => id === mark.id)?.verdict === "not checked";
  if (mark.fact.kind !== "strength-open" && !answered) return new Set(["load path"]);
  const units = answer.units.filter(({ unitId }) => mark.elements.includes(unitId));
  if (mark.fact.kind === "strength-open") return new Set(units.flatMap((unit) => whysOfUnit(unit, answer)));
  return new Set(
    units.flatMap((unit): Why[] => {
      if (unit.verdict === "does not work") return ["it does not stand"];
      return unit.verdict === "needs the engineer" ? whysOfUnit(unit, answer) : [];
    }),
  );
}

export const whysOfUnit = ({ reasons }: Unit, answer: Judged): Why[] => [
  ...new Set(reasons.flatMap((reason) => whyOf(reason, answer) ?? [])),
];

/** None for what settles the verdict by itself. */
export function whyOf(reason: Reason, answer: Judged): Why | undefined {
  switch (reason.kind) {
    case "over":
    case "hold not drawn":
      return undefined;
    case "beyond its bound":
      return whyBeyond(answer.results.find(({ id }) => id === reason.partId));
    case "not covered":
    case "strength refused":
    case "left out of the model":
    case "sheet walls otherwise":
    case "seismic system not drawn":
      return "not implemented";
    case "assumption decides":
      return "an assumption decides";
    case "no lateral wall":
      return reason.gap.wholeStorey ? undefined : "the code asks";
    case "simplified path closed":
    case "irregular":
    case "wind outside its limits":
    case "seismic system refused":
      return "the code asks";
    case "over if held down":
    case "moves":
    case "runs without equilibrium":
      return "it does not stand";
  }
}

function whyBeyond(result: Judged["results"][number] | undefined): Why {
  if (result?.limitState === "wall shear by the code") return "the code asks";
  if (result?.place.endsWith(", lifted") === true) return "an assumption decides";
  return result !== undefined && limits.has(result.limitState) ? "a limit he may set" : "not implemented";
}

const limits: ReadonlySet<string> = new Set(["drift", "deflection", "gap closure"]);
