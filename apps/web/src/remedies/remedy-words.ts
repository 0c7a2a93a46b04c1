import { chartSentence, type JudgedPart, type RemedyQuantities, type RemedySight } from "@cornerway/schema";
import { listOf } from "../wording/list-of.ts";
import { matterOf } from "../wording/matter-words.ts";
import type { NameOf } from "../wording/name-of.ts";

/** What one then sees. */
export const sightWords: Readonly<Record<RemedySight, string>> = {
  "frame round the opening": "the frame is seen",
  "post outside": "the posts are seen outside",
  "post in the wall": "the posts are seen in the wall",
  "deep header": "the header is seen, deep in the room",
  pier: "the pier is seen",
  "seat under the unit": "the seats are seen from below",
  "pad in the ground": "the ground is dug for pads",
};

/** Clear width and height that go: "0.40 m of clear width lost"; empty where nothing goes. */
export function lostWords({ lostWidthMm, lostHeightMm }: RemedyQuantities, length: (mm: number) => string): string {
  const lost = [
    lostWidthMm > 0 ? `${length(lostWidthMm)} of clear width lost` : "",
    lostHeightMm > 0 ? `${length(lostHeightMm)} of clear height lost` : "",
  ];
  return lost.filter((words) => words !== "").join(", ");
}

/** What is nearest to its strength, with its span over the assumptions where there is one. */
export function nearestWords(governing: readonly JudgedPart[], nameOf: NameOf): string {
  const told = governing.slice(0, MOST_TOLD).map(({ partId, utilisation, envelope }) => {
    const use = utilisation ?? Infinity;
    const span = spanWords(envelope);
    const sentence = chartSentence({ kind: "within", partId, use }, nameOf);
    return `${sentence.replace(/^Nearest to its strength: /, "").replace(/\.$/, "")}${span}`;
  });
  return told.length === 0 ? "" : `Nearest to its strength: ${told.join("; ")}.`;
}

const MOST_TOLD = 2;

function spanWords(envelope: JudgedPart["envelope"]): string {
  if (envelope?.most == null) return "";
  const [least, most] = [envelope.least.toFixed(2), envelope.most.toFixed(2)];
  return least === most ? "" : `, ${least} to ${most} by assumption`;
}

/** Marks by what they are about and where: "parts beyond their strength on T1 and F2". */
export function markNames(markIds: readonly string[], nameOf: NameOf): string {
  const byMatter = new Map<string, string[]>();
  for (const id of markIds) {
    const [kind = "", rest = ""] = id.split(":");
    const known = byMatter.get(kind) ?? [];
    const name = nameOf(rest.split("+")[0] ?? rest);
    byMatter.set(kind, known.includes(name) ? known : [...known, name]);
  }
  return [...byMatter].map(([kind, names]) => `${matterIn(kind)} on ${listOf(names)}`).join("; ");
}

function matterIn(kind: string): string {
  const words = matterOf(kind);
  return words.charAt(0).toLowerCase() + words.slice(1);
}
