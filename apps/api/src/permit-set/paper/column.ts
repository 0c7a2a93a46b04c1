import type { Block } from "./ink.ts";
import { caption, rule, text, type Box } from "./shapes.ts";
import { wrap } from "./wrap.ts";

/** What stands in the right column of a drawing sheet or on a page of notes, from the top down. */
export type ColumnItem =
  | { kind: "heading"; words: string }
  | { kind: "prose"; words: string }
  | { kind: "fact"; name: string; value: string }
  | { kind: "numbered"; number: string; words: string };

export const heading = (words: string): ColumnItem => ({ kind: "heading", words });
export const prose = (words: string): ColumnItem => ({ kind: "prose", words });
export const fact = (name: string, value: string): ColumnItem => ({ kind: "fact", name, value });
export const numbered = (number: string, words: string): ColumnItem => ({ kind: "numbered", number, words });

export type ColumnPart = { blocks: Block[]; used: number; y: number };

const size = 8.6;
const lead = 11;

/** Lays items down a column as far as they fit; `used` says how many did. */
export function layColumn(items: readonly ColumnItem[], at: Box): ColumnPart {
  const blocks: Block[] = [];
  let y = at.y;
  let used = 0;
  for (const item of items) {
    const made = itemBlock(item, at, y, used === 0);
    if (made.y > at.y + at.height && used > 0) break;
    blocks.push(...made.blocks);
    y = made.y;
    used += 1;
  }
  return { blocks, used, y };
}

/** Throws when not everything fits: nothing may be cut off a sheet unseen. */
export function wholeColumn(items: readonly ColumnItem[], at: Box): Block[] {
  const { blocks, used } = layColumn(items, at);
  if (used < items.length) throw new RangeError(`${items.length - used} items of a column do not fit`);
  return blocks;
}

/** As much as fits, and a last line that says where the rest stands. */
export function fittedColumn(items: readonly ColumnItem[], at: Box, rest: string): Block[] {
  const whole = layColumn(items, at);
  if (whole.used === items.length) return whole.blocks;
  const part = layColumn(items, { ...at, height: at.height - 26 });
  return [...part.blocks, ...layColumn([prose(rest)], { ...at, y: part.y, height: 26 }).blocks];
}

/** Names in a row, the first of them where there are many. */
export const shortList = (names: readonly string[], most = 30): string =>
  names.length <= most ? names.join(", ") : `${names.slice(0, most).join(", ")} and ${names.length - most} more`;

function itemBlock(item: ColumnItem, { x, width }: Box, y: number, first: boolean): { blocks: Block[]; y: number } {
  switch (item.kind) {
    case "heading": {
      const top = first ? y : y + 9;
      return { blocks: [{ role: "H2", inks: [caption(x, top + 8, item.words)] }], y: top + 15 };
    }
    case "prose": {
      const lines = wrap(item.words, "prose", size, width);
      return {
        blocks: [
          { role: "P", inks: lines.map((words, at) => text(x, y + 9 + at * lead, words, { face: "prose", size })) },
        ],
        y: y + lines.length * lead + 4,
      };
    }
    case "fact": {
      const names = wrap(item.name, "lettering", 7.6, width * 0.34);
      const lines = wrap(item.value, "prose", size, width * 0.63);
      const high = Math.max(lines.length, names.length) * lead + 3;
      return {
        blocks: [
          {
            role: "P",
            inks: [
              ...names.map((words, at) => text(x, y + 9 + at * lead, words, { size: 7.6, tone: "graphite" })),
              ...lines.map((words, at) => text(x + width * 0.37, y + 9 + at * lead, words, { face: "prose", size })),
            ],
          },
          { role: "Artifact", inks: [rule(x, x + width, y + high, "hair", "ruling")] },
        ],
        y: y + high + 1,
      };
    }
    case "numbered": {
      const lines = wrap(item.words, "prose", size, width - 22);
      return {
        blocks: [
          {
            role: "P",
            inks: [
              text(x, y + 9, item.number, { face: "lettering strong", size: 8 }),
              ...lines.map((words, at) => text(x + 22, y + 9 + at * lead, words, { face: "prose", size })),
            ],
          },
        ],
        y: y + lines.length * lead + 3,
      };
    }
  }
}
