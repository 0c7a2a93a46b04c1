import type { SealHindrance } from "@cornerway/schema";
import type { NameOf } from "./name-of.ts";

/** What stands in the way of the seal, in one sentence; marks are worded by `markWords`. */
export function hindranceSentence(
  hindrance: SealHindrance,
  nameOf: NameOf,
  markWords: (markId: string) => string,
): string {
  switch (hindrance.why) {
    case "not assessed":
      return "The newest revision is not checked yet.";
    case "strength not judged under all loads":
      return "Strength is not judged under all loads: wind, snow and earthquake of the place are not entered.";
    case "mark":
      return markWords(hindrance.markId);
    case "beyond its limit":
      return `${hindrance.part} of ${nameOf(hindrance.ownerId)} is used to ${hindrance.utilisation.toFixed(2)} of its strength.`;
    case "condition open":
      return `Condition ${hindrance.number} is open.`;
    case "from memory":
      return `From memory: ${hindrance.value}`;
  }
}

/** "1.4 MB", "312 kB": decimal units, IEC 80000-13. */
export const sizeWords = (bytes: number): string =>
  bytes >= 1_000_000 ? `${(bytes / 1_000_000).toFixed(1)} MB` : `${Math.max(1, Math.round(bytes / 1000))} kB`;
