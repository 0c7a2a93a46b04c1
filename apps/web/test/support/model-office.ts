import { applyOperations, canonicalJson, digestOf, touchedByAll } from "@cornerway/schema";
import type { Draft, DraftAct, DraftActDone, Operation, RecordEntry, Scheme } from "@cornerway/schema";
import { ServiceProblem } from "../../src/data/http.ts";

type Taken = { act: DraftAct; by: string; writes: string[]; inverse: Operation[]; done: DraftActDone };

/**
 * The service's rules of the draft in memory, by the schema's own apply and touched: server order, one act for one id,
 * a conflict when what an act touches was written after its base and not taken back, undos only of what is as it was left.
 */
export class ModelOffice {
  scheme: Scheme;
  number = 0;
  readonly taken: Taken[] = [];
  readonly entries: RecordEntry[] = [];

  constructor(scheme: Scheme) {
    this.scheme = scheme;
  }

  draft = (): Draft => ({
    number: this.number,
    contentDigest: digestOf(this.scheme),
    scheme: this.scheme,
    movesSinceRevision: this.number,
  });

  take(by: string, act: DraftAct): DraftActDone {
    const earlier = this.taken.find((each) => each.act.id === act.id);
    if (earlier !== undefined) {
      if (canonicalJson(earlier.act) !== canonicalJson(act)) throw problem(409, "id-reused");
      return earlier.done;
    }
    if (act.base > this.number) throw problem(409, "draft-base-ahead");
    this.#refuseConflict(act);
    const touched = touchedByAll(this.scheme, act.operations);
    const applied = applyOperations(this.scheme, act.operations);
    if (!applied.ok) throw problem(422, "draft-refused");
    this.scheme = applied.scheme;
    this.number += 1;
    const done = { draftNumber: this.number, contentDigest: digestOf(this.scheme), entry: this.number };
    this.taken.push({ act, by, writes: touched.writes, inverse: applied.inverse, done });
    this.entries.push(entryOf(act, by, applied.inverse, done));
    return done;
  }

  #refuseConflict(act: DraftAct): void {
    if (act.undoes === undefined) {
      const { reads, writes } = touchedByAll(this.scheme, act.operations);
      return this.#refuseAfter(act.base, [...reads, ...writes], act);
    }
    const undone = this.taken.find((each) => each.act.id === act.undoes);
    if (undone === undefined || canonicalJson(undone.inverse) !== canonicalJson(act.operations))
      throw problem(400, "body-invalid");
    this.#refuseAfter(undone.done.draftNumber, undone.writes, act);
  }

  #refuseAfter(after: number, keys: string[], act: DraftAct): void {
    const later = this.taken.slice(after).filter(({ writes }) => writes.some((key) => keys.includes(key)));
    const theirs = withoutTakenBack(later);
    if (theirs.length === 0) return;
    const written = new Set(theirs.flatMap(({ writes }) => writes));
    throw problem(409, "draft-conflict", {
      draftNumber: this.number,
      elements: keys.filter((key) => written.has(key)),
      theirs: theirs.map((each) => ({
        draftNumber: each.done.draftNumber,
        by: each.by,
        operations: each.act.operations,
      })),
      mine: act.operations,
    });
  }
}

function withoutTakenBack(later: readonly Taken[]): Taken[] {
  const ids = new Set(later.map(({ act }) => act.id));
  const gone = new Set<string>();
  for (const { act } of later.toReversed())
    if (act.undoes !== undefined && !gone.has(act.id) && ids.has(act.undoes)) gone.add(act.id).add(act.undoes);
  return later.filter(({ act }) => !gone.has(act.id));
}

const problem = (status: number, code: string, conflict?: ServiceProblem["problem"]["conflict"]) =>
  new ServiceProblem({
    type: "about:blank",
    title: code,
    status,
    code,
    ...(conflict === undefined ? {} : { conflict }),
  });

const someone = "00000000-0000-4000-8000-000000000001";

const entryOf = (act: DraftAct, by: string, inverse: Operation[], done: DraftActDone): RecordEntry => ({
  projectId: "00000000-0000-4000-8000-000000000009",
  number: done.entry,
  at: "2026-01-01T00:00:00.000Z",
  actor: { id: someone, name: by, role: "architect" },
  kind: "drawn",
  leaf: done.contentDigest,
  head: done.contentDigest,
  payload: {
    kind: "drawn",
    actId: act.id,
    draftNumber: done.draftNumber,
    contentDigest: done.contentDigest,
    operations: act.operations,
    inverse,
    undoes: act.undoes ?? null,
  },
});
