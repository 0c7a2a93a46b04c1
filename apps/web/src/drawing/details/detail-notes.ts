import { textWidthPx } from "../label/text-width.ts";

/** Notes beside a detail are no wider than this, px. */
export const noteWidthPx = 96;
export const noteSizePx = 11;
export const noteLinePx = 13;
const gapPx = 4;

/** A note in lines, and the foot of its first line, px. */
export type DetailNote<P> = { part: P; lines: readonly string[]; yPx: number };

/** Notes in the order of their parts from the top, each level with its part where there is room, none over another nor past `footPx`. */
export function detailNotes<P extends { readonly name: string }>(
  parts: readonly { part: P; yPx: number }[],
  footPx: number,
): DetailNote<P>[] {
  const notes = parts
    .toSorted((a, b) => a.yPx - b.yPx)
    .map(({ part, yPx }) => ({ part, lines: wrapped(part.name), yPx: yPx + 4 }));
  const downwards = notes.reduce<DetailNote<P>[]>((placed, note) => {
    const last = placed.at(-1);
    const least = last === undefined ? -Infinity : last.yPx + last.lines.length * noteLinePx + gapPx;
    return [...placed, { ...note, yPx: Math.max(note.yPx, least) }];
  }, []);
  return downwards.reduceRight<DetailNote<P>[]>((placed, note) => {
    const [next] = placed;
    const most = (next?.yPx ?? footPx + gapPx + noteLinePx) - gapPx - note.lines.length * noteLinePx;
    return [{ ...note, yPx: Math.min(note.yPx, most) }, ...placed];
  }, []);
}

function wrapped(text: string): string[] {
  return text.split(" ").reduce<string[]>((lines, word) => {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    return last === undefined || textWidthPx(longer, noteSizePx) > noteWidthPx
      ? [...lines, word]
      : [...lines.slice(0, -1), longer];
  }, []);
}
