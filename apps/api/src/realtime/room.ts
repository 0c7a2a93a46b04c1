import { liveCloseCodes, type RecordEntry } from "@cornerway/schema";
import type { Line } from "./line.ts";

/** All entries of a project after a number, in order, at most `limit`. */
export type ReadEntries = (after: number, limit: number) => Promise<RecordEntry[]>;

const pageSize = 200;
const mostKept = 200;

/**
 * Everyone who watches one project. New entries are read once for all of them; whoever is further behind than the
 * entries kept here reads the record itself until they have caught up.
 */
export class Room {
  readonly lines = new Set<Line>();
  readonly #read: ReadEntries;
  /** The last entries, without gaps, up to `#upTo`. */
  #kept: RecordEntry[] = [];
  #upTo: number;
  #underway: Promise<void> | undefined;
  #again = false;

  constructor(upTo: number, read: ReadEntries) {
    this.#upTo = upTo;
    this.#read = read;
  }

  /** Reads what is new and tells everyone. Calls during a reading make it look once more. */
  advance(): Promise<void> {
    this.#again = true;
    this.#underway ??= this.#advanceAll().finally(() => {
      this.#underway = undefined;
    });
    return this.#underway;
  }

  /** Tells a line everything after a number, and from then on what is new. */
  async resume(line: Line, after: number): Promise<void> {
    await this.advance();
    if (after > this.#upTo) return line.close(liveCloseCodes.recordUnknown, "the record is not that far");
    line.after = after;
    line.send({ type: "entries", entries: [], upTo: after });
    while (line.open && line.after < this.#firstKept() - 1) {
      await line.sendAtTheirPace(await this.#page(line.after));
    }
    line.live = true;
    this.#tell(line);
  }

  async #advanceAll(): Promise<void> {
    while (this.#again) {
      this.#again = false;
      for (let full = true; full;) {
        const entries = await this.#read(this.#upTo, pageSize);
        full = entries.length === pageSize;
        this.#upTo = entries.at(-1)?.number ?? this.#upTo;
        this.#kept = [...this.#kept, ...entries].slice(-mostKept);
        for (const line of this.lines) if (line.live) this.#tell(line);
      }
    }
  }

  async #page(after: number): Promise<RecordEntry[]> {
    const entries = await this.#read(after, pageSize);
    if (entries[0]?.number !== after + 1) throw new Error(`the record has no entry ${after + 1}`);
    return entries;
  }

  #tell(line: Line): void {
    const { after } = line;
    if (after === null || after >= this.#upTo) return;
    line.sendEntries(this.#kept.slice(after + 1 - this.#firstKept()));
  }

  #firstKept(): number {
    return this.#upTo - this.#kept.length + 1;
  }
}
