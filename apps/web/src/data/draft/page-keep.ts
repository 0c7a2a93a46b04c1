import type { Draft } from "@cornerway/schema";
import { Draft as DraftShape } from "@cornerway/schema";
import { keepDb } from "../keep-db.ts";
import { Kept, nothingKept, unsentIn } from "./kept.ts";

const actsPrefix = (personId: string, projectId: string) => `acts ${personId} ${projectId} `;
const draftKey = (personId: string, projectId: string) => `draft ${personId} ${projectId}`;
const lockOf = (actsKey: string) => `cornerway ${actsKey}`;

/**
 * What one open page keeps in this browser for one person and project. Every page has a shelf of its own and holds a lock
 * while it lives; what a page left on its shelf is taken over by the first other page that gets its lock, so nothing is
 * sent by two and nothing stays behind.
 */
export class PageKeep {
  readonly #personId: string;
  readonly #projectId: string;
  readonly #own: string;
  readonly #end = new AbortController();

  private constructor(personId: string, projectId: string, pageId: string) {
    this.#personId = personId;
    this.#projectId = projectId;
    this.#own = actsPrefix(personId, projectId) + pageId;
  }

  /** Opens a shelf; `adopt` is given what other pages left, now or when they go. */
  static async open(
    who: { personId: string; projectId: string; pageId: string },
    adopt: (kept: Kept) => void,
  ): Promise<PageKeep> {
    const keep = new PageKeep(who.personId, who.projectId, who.pageId);
    await keep.#holdOwn();
    await keep.#awaitOthers(adopt);
    return keep;
  }

  /** Keeps what is here and nowhere else; an empty shelf is taken down. */
  async keep(kept: Kept): Promise<void> {
    if (this.#end.signal.aborted) return;
    await (unsentIn(kept) === 0 ? keepDb.remove(this.#own) : keepDb.put(this.#own, kept));
  }

  keepDraft = (draft: Draft): Promise<void> => keepDb.put(draftKey(this.#personId, this.#projectId), draft);

  /** Lets the shelf go to whoever opens the project next. */
  close(): void {
    this.#end.abort();
  }

  async #holdOwn(): Promise<void> {
    const locks = lockManager();
    if (locks === null) return;
    await new Promise<void>((held) => {
      void locks.request(lockOf(this.#own), async () => {
        held();
        await new Promise((end) => this.#end.signal.addEventListener("abort", end));
      });
    });
  }

  async #awaitOthers(adopt: (kept: Kept) => void): Promise<void> {
    const keys = await keepDb.keys(actsPrefix(this.#personId, this.#projectId));
    for (const key of keys.filter((each) => each !== this.#own)) void this.#take(key, adopt);
    const tell = new BroadcastChannel(lockOf(actsPrefix(this.#personId, this.#projectId)));
    tell.addEventListener("message", ({ data }) => {
      if (typeof data === "string") void this.#take(data, adopt);
    });
    tell.postMessage(this.#own);
    this.#end.signal.addEventListener("abort", () => tell.close());
  }

  /** Waits for the page that owns the shelf to go, then takes over what it left. */
  async #take(key: string, adopt: (kept: Kept) => void): Promise<void> {
    const locks = lockManager();
    const takeOver = async () => {
      const left = Kept.safeParse(await keepDb.get(key));
      if (this.#end.signal.aborted || !left.success) return;
      await keepDb.move(key, this.#own, (own) => joined(readKept(own), left.data));
      adopt(left.data);
    };
    if (locks === null) return takeOver();
    await locks.request(lockOf(key), { signal: this.#end.signal }, takeOver).catch(unlessAborted);
  }
}

/** The draft as this browser last saw it; undefined where it never did, or as an earlier version kept it. */
export async function keptDraft(personId: string, projectId: string): Promise<Draft | undefined> {
  const kept = DraftShape.safeParse(await keepDb.get(draftKey(personId, projectId)));
  return kept.success ? kept.data : undefined;
}

/** How many moves of this person wait in this browser, over all projects and pages. */
export async function unsentOf(personId: string): Promise<number> {
  const shelves = await keepDb.all(`acts ${personId} `);
  return shelves.reduce<number>((sum, shelf) => sum + unsentIn(readKept(shelf)), 0);
}

/** Forgets everything kept for this person. */
export const forgetKept = async (personId: string): Promise<void> => {
  await keepDb.removeAll(`acts ${personId} `);
  await keepDb.removeAll(`draft ${personId} `);
  await keepDb.removeAll(`answer ${personId} `);
};

function readKept(value: unknown): Kept {
  const kept = Kept.safeParse(value);
  return kept.success ? kept.data : nothingKept;
}

const joined = (own: Kept, left: Kept): Kept => ({
  pending: [...own.pending, ...left.pending],
  conflicts: [...own.conflicts, ...left.conflicts],
});

/** Null on an origin that is not secure: then shelves are taken over at once. */
const lockManager = (): LockManager | null => ("locks" in navigator ? navigator.locks : null);

function unlessAborted(error: unknown): void {
  if (!(error instanceof DOMException && error.name === "AbortError")) throw error;
}
