import { standingOf, wholeStandingOf, type Judged, type Standing } from "@cornerway/schema";
import type { Connection } from "../store/connection.ts";
import { readRevision, readRevisionHeads, summaryOf } from "../store/revision-rows.ts";
import { foundOtherwise } from "./found-otherwise.ts";
import type { Bound } from "./newest-revision.ts";

/** How judgements on elements of a project stand to its newest revision; each revision is read once, and only where digests differ. */
export class Standings {
  readonly #db: Connection;
  readonly #projectId: string;
  readonly #read = new Map<string, Promise<Judged>>();
  #newest: Promise<Bound | { revision: string; contentDigest: string; resultDigest: null }> | undefined;

  #foundOtherwise: Promise<ReadonlySet<string>> | undefined;

  constructor(db: Connection, projectId: string) {
    this.#db = db;
    this.#projectId = projectId;
  }

  /** `elementId` is null for a judgement on the revision as a whole. */
  async of(elementId: string | null, bound: Bound): Promise<Standing> {
    const newest = await (this.#newest ??= this.#readNewest());
    const { revision } = bound;
    const same = bound.contentDigest === newest.contentDigest && bound.resultDigest === newest.resultDigest;
    if (same && (await this.#found()).size === 0)
      return { state: "stands", revision, newest: newest.revision, changed: { elements: [], results: [], whole: [] } };
    const given = await this.#judged(revision);
    const held = { ...(await this.#judged(newest.revision)), found: await this.#found() };
    return elementId === null ? wholeStandingOf(given, held) : standingOf(elementId, given, held);
  }

  async #readNewest() {
    const [head] = await readRevisionHeads(this.#db, this.#projectId);
    if (head === undefined) throw new Error(`standings: ${this.#projectId} has no revision to judge`);
    const { letter: revision, contentDigest, resultDigest } = await summaryOf(this.#db, this.#projectId, head);
    return { revision, contentDigest, resultDigest };
  }

  /** What survey and site have found otherwise than the newest revision draws. */
  #found(): Promise<ReadonlySet<string>> {
    return (this.#foundOtherwise ??= this.#readFound());
  }

  async #readFound(): Promise<ReadonlySet<string>> {
    const { revision } = await (this.#newest ??= this.#readNewest());
    return foundOtherwise(this.#db, this.#projectId, async () => (await this.#judged(revision)).scheme);
  }

  #judged(letter: string): Promise<Judged> {
    const known = this.#read.get(letter) ?? this.#readJudged(letter);
    this.#read.set(letter, known);
    return known;
  }

  async #readJudged(letter: string): Promise<Judged> {
    const revision = await readRevision(this.#db, this.#projectId, letter);
    if (revision === null) throw new Error(`standings: there is no revision ${letter}`);
    return { letter, scheme: revision.scheme, result: revision.result };
  }
}
