import { randomUUID } from "node:crypto";
import { setTimeout as pause } from "node:timers/promises";
import { Draft, DraftActDone, Problem, type DraftAct, type Operation } from "@cornerway/schema";
import type { SignedIn } from "../../two-process/drawing-client.ts";

const betweenMs = 250;
const againMs = 100;

/** Someone who draws all the time, sends each act under one id until it is acknowledged, and now and then sends a revision. */
export class Drawer {
  /** Acts the service has acknowledged. */
  readonly acknowledged = new Set<string>();
  repeats = 0;
  revisions = 0;
  readonly projectId: string;
  readonly #origins: readonly string[];
  readonly #session: SignedIn;
  readonly #n: number;
  #turn: number;
  #base = 0;
  #ended = false;

  constructor(origins: readonly string[], projectId: string, session: SignedIn, n: number) {
    this.#origins = origins;
    this.projectId = projectId;
    this.#session = session;
    this.#n = n;
    this.#turn = n;
  }

  async draw(): Promise<void> {
    for (let k = 0; !this.#ended; k += 1) {
      await this.act([operationFor(this.#n, k)]);
      await pause(betweenMs);
    }
  }

  end(): void {
    this.#ended = true;
  }

  /** Sends the draft as it is; tried a few times, since others draw in between. */
  async sendRevision(): Promise<void> {
    for (let tries = 0; tries < 20 && !this.#ended; tries += 1) {
      const read = await this.#ask("draft");
      if (read?.ok !== true) continue;
      const { number: draftNumber, contentDigest } = Draft.parse(await read.json());
      const sent = await this.#ask("revisions", { id: randomUUID(), draftNumber, contentDigest, remark: null });
      if (sent?.ok !== true) continue;
      this.revisions += 1;
      return;
    }
  }

  /** Resolves once the act is acknowledged. */
  async act(operations: Operation[]): Promise<void> {
    let act: DraftAct = { id: randomUUID(), base: this.#base, operations };
    for (;;) {
      const answer = await this.#ask("draft/acts", act);
      const body: unknown = await answer?.json().catch(() => undefined);
      if (answer?.ok === true && body !== undefined) {
        this.#base = DraftActDone.parse(body).draftNumber;
        this.acknowledged.add(act.id);
        return;
      }
      const problem = Problem.safeParse(body);
      if (problem.data?.conflict !== undefined) act = { ...act, base: problem.data.conflict.draftNumber };
      else if (problem.success && problem.data.status < 500) throw new Error(`refused: ${JSON.stringify(body)}`);
      else {
        this.repeats += 1;
        this.#turn += 1;
        await pause(againMs);
      }
    }
  }

  /** Undefined when no answer came: whether it was done shows when it is sent again. */
  async #ask(route: string, body?: object): Promise<Response | undefined> {
    const { cookie, csrfToken } = this.#session;
    const origin = this.#origins[this.#turn % this.#origins.length];
    const headers = { cookie, "csrf-token": csrfToken, "content-type": "application/json" };
    const signal = AbortSignal.timeout(20_000);
    const post =
      body === undefined ? { headers, signal } : { method: "POST", headers, body: JSON.stringify(body), signal };
    return fetch(`${origin}/api/projects/${this.projectId}/${route}`, post).catch(() => undefined);
  }
}

/** Ten posts each, set and then moved about. */
function operationFor(n: number, k: number): Operation {
  const id = `p-${n}-${k % 10}`;
  const place = { xUm: n * 1_000_000, yUm: (k % 10_000) * 10_000 };
  if (k >= 10) return { kind: "post.move", id, ...place };
  const rest = { tag: `P${n * 10 + k}`, baseZUm: 0, topZUm: 2_400_000, turnMdeg: 0, section: "HSS 4x4x1/4" };
  return { kind: "post.set", post: { id, ...place, ...rest } };
}
