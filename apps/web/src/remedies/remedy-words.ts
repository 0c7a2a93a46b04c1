import type { RemedyQuantities, RemedySight } from "@cornerway/schema";
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

export const figureText = (use: number): string => use.toFixed(2);

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
