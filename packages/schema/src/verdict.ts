import { z } from "zod";

/** From the quietest to the one that decides: a whole takes the last of its parts. */
export const verdicts = [
  "works as built",
  "works with steel",
  "not checked",
  "needs the engineer",
  "does not work",
] as const;
export const Verdict = z.enum(verdicts).meta({ id: "Verdict" });
export type Verdict = z.infer<typeof Verdict>;

/** The verdict of a whole: the worst of its parts; `not checked` when there are none. */
export const worstVerdict = (parts: readonly Verdict[]): Verdict =>
  parts.reduce<Verdict>(
    (worst, part) => (verdicts.indexOf(part) > verdicts.indexOf(worst) ? part : worst),
    parts[0] ?? "not checked",
  );

/** Where a value comes from. Only `published` and `derived` ever count as verified. */
export const certainties = ["published", "derived", "memory", "common practice"] as const;
export const Certainty = z.enum(certainties).meta({ id: "Certainty" });
export type Certainty = z.infer<typeof Certainty>;
