import type { JudgedPart, Mark } from "@cornerway/schema";

/** The parts a mark of strength names; none of another mark. */
export function overParts({ fact }: Mark): readonly JudgedPart[] {
  return fact.kind === "overstressed" || fact.kind === "strength-open" ? fact.parts : [];
}
