import { applyOperations } from "@cornerway/schema";
import type { Draft, DraftAct, DraftActDone, Operation, RecordEntry, Scheme } from "@cornerway/schema";
import { NoAnswer, ServiceProblem } from "../../src/data/http.ts";
import type { DraftPorts } from "../../src/data/draft/draft-store.ts";
import { nothingKept, type Kept } from "../../src/data/draft/kept.ts";

const digestOf = (number: number) => number.toString(16).padStart(64, "0");
const nobody = { id: "00000000-0000-4000-8000-000000000001", name: "Ana Reyl", role: "architect" } as const;

/** A stand-in for the service at the other end of the ports: keeps the order, answers when told to. */
export class Office implements DraftPorts {
  scheme: Scheme;
  number = 0;
  reachable = true;
  entries: RecordEntry[] = [];
  readonly received: DraftAct[] = [];
  conflictWith: string[] | null = null;
  refuse: string | null = null;
  /** Acts arrive and are taken in, and nobody hears of it. */
  loseAnswers = false;
  /** The code and status it answers with while it has no hand free. */
  busy: { status: number; code: string } | null = null;
  #ids = 0;
  #waiting: (() => void)[] = [];

  constructor(scheme: Scheme) {
    this.scheme = scheme;
  }

  fetchDraft = async (): Promise<Draft> => {
    if (!this.reachable) throw new NoAnswer(new TypeError("fetch failed"));
    return {
      number: this.number,
      contentDigest: digestOf(this.number),
      scheme: this.scheme,
      movesSinceRevision: this.number,
    };
  };

  sendAct = async (act: DraftAct): Promise<DraftActDone> => {
    if (!this.reachable) throw new NoAnswer(new TypeError("fetch failed"));
    if (this.busy !== null) throw problem(this.busy.status, this.busy.code, "Try again shortly.");
    this.received.push(act);
    if (this.refuse !== null) throw problem(422, "draft-refused", this.refuse);
    if (this.conflictWith !== null) throw conflict(this.conflictWith, act.operations, this.number);
    const earlier = this.entries.find(({ payload }) => payload?.kind === "drawn" && payload.actId === act.id);
    const number = earlier?.number;
    const done =
      number === undefined
        ? this.take(act.id, act.operations)
        : { draftNumber: number, contentDigest: digestOf(number), entry: number };
    if (this.loseAnswers) throw new NoAnswer(new TypeError("connection reset"));
    return done;
  };

  /** Someone draws at the service; the entry is kept for the live line. */
  take(actId: string, operations: Operation[], by: string = nobody.name): DraftActDone {
    const applied = applyOperations(this.scheme, operations);
    if (!applied.ok) throw problem(422, "draft-refused", applied.refusal.reason);
    this.scheme = applied.scheme;
    this.number += 1;
    const done = { draftNumber: this.number, contentDigest: digestOf(this.number), entry: this.number };
    this.entries.push(entryOf(done, actId, operations, applied.inverse, by));
    return done;
  }

  kept: Kept = nothingKept;
  keep = async (kept: Kept): Promise<void> => {
    this.kept = kept;
  };
  newId = (): string => `00000000-0000-4000-9000-${String((this.#ids += 1)).padStart(12, "0")}`;
  now = (): number => 1000;
  later = (call: () => void): (() => void) => {
    this.#waiting.push(call);
    return () => {
      this.#waiting = this.#waiting.filter((each) => each !== call);
    };
  };

  /** Lets the time pass that someone waits for. */
  passTime(): void {
    const due = this.#waiting;
    this.#waiting = [];
    for (const call of due) call();
  }
}

/** Until everything that was sent is answered. */
export const settled = () => new Promise<void>((done) => setTimeout(done, 0));

function entryOf(
  done: DraftActDone,
  actId: string,
  operations: Operation[],
  inverse: Operation[],
  by: string,
): RecordEntry {
  return {
    projectId: "00000000-0000-4000-8000-000000000009",
    number: done.entry,
    at: "2026-01-01T00:00:00.000Z",
    actor: { ...nobody, name: by },
    kind: "drawn",
    leaf: digestOf(done.entry),
    head: digestOf(done.entry),
    payload: {
      kind: "drawn",
      actId,
      draftNumber: done.draftNumber,
      contentDigest: done.contentDigest,
      operations,
      inverse,
      undoes: null,
    },
  };
}

const problem = (status: number, code: string, detail: string) =>
  new ServiceProblem({ type: "about:blank", title: detail, status, code, detail });

function conflict(elements: string[], mine: Operation[], draftNumber: number): ServiceProblem {
  const theirs = [{ draftNumber, by: "Bo Linne", operations: [] }];
  return new ServiceProblem({
    type: "about:blank",
    title: "Someone changed the same thing first.",
    status: 409,
    code: "draft-conflict",
    conflict: { draftNumber, elements, theirs, mine },
  });
}
