import { PersonId, Presence, presenceLastsMs, ProjectId, Role, type ServerMessage } from "@cornerway/schema";
import { z } from "zod";

export type Someone = Extract<ServerMessage, { type: "here" }>["people"][number];

/** What processes tell each other of people at their own sockets. `gone` ends it, so does silence. */
const Word = z.strictObject({
  projectId: ProjectId,
  connection: z.string().max(100),
  personId: PersonId,
  name: z.string(),
  role: Role,
  presence: Presence.nullable(),
  gone: z.boolean(),
});
export type Word = z.infer<typeof Word>;

interface Held {
  word: Word;
  heardAt: number;
}

/**
 * Who is here, at this process and at others; never in the record. Expires 15 s after the last word. `now` gives
 * milliseconds.
 */
export class PresenceBoard {
  readonly #held = new Map<string, Held>();
  readonly #now: () => number;

  constructor(now: () => number) {
    this.#now = now;
  }

  /** Takes a word in and says which project it concerns. */
  take(word: Word): string {
    if (word.gone) this.#held.delete(word.connection);
    else this.#held.set(word.connection, { word, heardAt: this.#now() });
    return word.projectId;
  }

  /** Takes in what another process said; undefined when it is no word this one knows. */
  takeFrom(body: unknown): string | undefined {
    const read = Word.safeParse(body);
    return read.success ? this.take(read.data) : undefined;
  }

  /** Drops those not heard of for too long; says which projects changed. */
  expire(): Set<string> {
    const changed = new Set<string>();
    for (const [connection, { word, heardAt }] of this.#held) {
      if (this.#now() - heardAt <= presenceLastsMs) continue;
      this.#held.delete(connection);
      changed.add(word.projectId);
    }
    return changed;
  }

  /** Everyone in a project, by connection, so that all are told in one order. */
  people(projectId: string): Someone[] {
    return [...this.#held.values()]
      .filter(({ word }) => word.projectId === projectId)
      .map(({ word: { connection, personId, name, role, presence } }) => ({
        connection,
        personId,
        name,
        role,
        presence,
      }))
      .sort((a, b) => (a.connection < b.connection ? -1 : 1));
  }
}
