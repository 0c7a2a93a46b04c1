import type { SealHindrance, Verdict } from "@cornerway/schema";
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
    case "found otherwise":
      return `Survey or site have found ${nameOf(hindrance.elementId)} otherwise than it is drawn.`;
    case "condition open":
      return `Condition ${hindrance.number} is open.`;
    case "from memory":
      return `From memory: ${hindrance.value}`;
  }
}

/** How many of one kind stand in the way: "4 marks do not work". */
export function hindrancesHeading(hindrances: readonly SealHindrance[]): string {
  const [first] = hindrances;
  const count = hindrances.length;
  const one = count === 1;
  switch (first?.why) {
    case undefined:
      return "Nothing stands in the way";
    case "not assessed":
      return "The newest revision is not checked yet";
    case "strength not judged under all loads":
      return "Strength is not judged under all loads";
    case "mark":
      return `${count} ${one ? "mark" : "marks"} ${verdictVerbs[first.verdict][one ? 0 : 1]}`;
    case "beyond its limit":
      return `${count} ${one ? "part is" : "parts are"} used beyond ${one ? "its" : "their"} strength`;
    case "found otherwise":
      return `${count} ${one ? "element was" : "elements were"} found otherwise than drawn`;
    case "condition open":
      return `${count} ${one ? "condition is" : "conditions are"} open`;
    case "from memory":
      return `${count} ${one ? "value is" : "values are"} from memory and not confirmed`;
  }
}

/** For one mark, and for several. */
const verdictVerbs: Record<Verdict, readonly [string, string]> = {
  "works as built": ["works as built", "work as built"],
  "works with steel": ["works with steel", "work with steel"],
  "not checked": ["is not checked", "are not checked"],
  "needs the engineer": ["needs the engineer", "need the engineer"],
  "does not work": ["does not work", "do not work"],
};

/** "1.4 MB", "312 kB": decimal units, IEC 80000-13. */
export const sizeWords = (bytes: number): string =>
  bytes >= 1_000_000 ? `${(bytes / 1_000_000).toFixed(1)} MB` : `${Math.max(1, Math.round(bytes / 1000))} kB`;
