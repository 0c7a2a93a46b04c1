import type { RecordEntry } from "@cornerway/schema";

/** More than this in one stretch would run off the sheet. */
const mostStitches = 16;

export interface Stitches {
  /** Entries after each revision and before the next, by letter. */
  since: ReadonlyMap<string, number>;
  /** Entries before the first revision. */
  before: number;
  /** Number of the last entry. */
  entries: number;
}

/** How the record divides between the revisions; moves after the last one are drawn as pencil dashes, not here. */
export function spineStitches(record: readonly RecordEntry[]): Stitches {
  const since = new Map<string, number>();
  let before = 0;
  let letter: string | null = null;
  const last = record.findLastIndex(({ kind }) => kind === "revision sent");
  for (const [at, { payload, kind }] of record.entries()) {
    if (payload?.kind === "revision sent") {
      letter = payload.letter;
      since.set(letter, 0);
    } else if (letter === null) before += 1;
    else if (at < last || kind !== "drawn") since.set(letter, (since.get(letter) ?? 0) + 1);
  }
  return {
    since: new Map([...since].map(([key, count]) => [key, Math.min(mostStitches, count)])),
    before: Math.min(mostStitches, before),
    entries: record.at(-1)?.number ?? 0,
  };
}
