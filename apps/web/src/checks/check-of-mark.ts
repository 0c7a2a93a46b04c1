import type { Mark } from "@cornerway/schema";

/** The check a mark of strength tells first; null for marks that name none. */
export function checkOfMark({ fact }: Mark): string | null {
  if (fact.kind === "strength-adequate") return fact.governing.partId;
  if (fact.kind === "overstressed" || fact.kind === "strength-open") return fact.parts[0]?.partId ?? null;
  return null;
}
