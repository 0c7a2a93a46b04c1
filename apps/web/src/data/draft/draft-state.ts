import { applyOperations } from "@cornerway/schema";
import type { Draft, DraftActDone, Operation, Problem, Refusal, Scheme } from "@cornerway/schema";

/** An act of this page that the service has not yet put in its order. */
export interface PendingAct {
  id: string;
  operations: Operation[];
  undoes: string | null;
  /** True while an answer is awaited. */
  sent: boolean;
  /** The number the service gave it, when that came before the entries between. */
  acknowledged: number | null;
}

export type Theirs = NonNullable<Problem["conflict"]>["theirs"];

/** Two hands on one thing: the act stays here, as a ghost, until mine or theirs is chosen. */
export interface Conflict {
  act: PendingAct;
  elements: string[];
  theirs: Theirs;
}

export interface DraftState {
  /** Draft number in server order that `server` stands at. */
  number: number;
  contentDigest: string;
  /** Acts in server order since the last revision. */
  movesSinceRevision: number;
  server: Scheme;
  /** `server` with every pending act on top: what is on the screen. */
  scheme: Scheme;
  pending: PendingAct[];
  conflicts: Conflict[];
}

export type Drawn = { ok: true; state: DraftState; inverse: Operation[] } | { ok: false; refusal: Refusal };

export const openDraft = (draft: Draft): DraftState => ({
  number: draft.number,
  contentDigest: draft.contentDigest,
  movesSinceRevision: draft.movesSinceRevision,
  server: draft.scheme,
  scheme: draft.scheme,
  pending: [],
  conflicts: [],
});

/** Lays one act of this page on the draft, or says why the scheme cannot take it. */
export function drawAct(state: DraftState, act: Pick<PendingAct, "id" | "operations" | "undoes">): Drawn {
  const applied = applyOperations(state.scheme, act.operations);
  if (!applied.ok) return applied;
  const pending = [...state.pending, { ...act, sent: false, acknowledged: null }];
  return { ok: true, state: { ...state, pending, scheme: applied.scheme }, inverse: applied.inverse };
}

/** The service took the act in: it becomes part of the server's draft at once when nothing lies between. */
export function acknowledge(state: DraftState, actId: string, done: DraftActDone): DraftState {
  const act = state.pending.find((pending) => pending.id === actId);
  if (act === undefined || done.draftNumber <= state.number) return withdraw(state, actId);
  if (done.draftNumber > state.number + 1) return patch(state, actId, { sent: false, acknowledged: done.draftNumber });
  const applied = applyOperations(state.server, act.operations);
  if (!applied.ok) return patch(state, actId, { sent: false, acknowledged: done.draftNumber });
  return relay({
    ...state,
    number: done.draftNumber,
    contentDigest: done.contentDigest,
    movesSinceRevision: state.movesSinceRevision + 1,
    server: applied.scheme,
    pending: without(state.pending, actId),
  });
}

export const markSent = (state: DraftState, actId: string, sent: boolean): DraftState => patch(state, actId, { sent });

/** Takes an act of this page off the draft. */
export const withdraw = (state: DraftState, actId: string): DraftState =>
  relay({ ...state, pending: without(state.pending, actId) });

/** Sets an act aside as a ghost, with what others did to the same thing. */
export function setAside(state: DraftState, actId: string, elements: string[], theirs: Theirs): DraftState {
  const act = state.pending.find((pending) => pending.id === actId);
  if (act === undefined) return state;
  const conflict = { act: { ...act, sent: false }, elements, theirs };
  return relay({ ...state, pending: without(state.pending, actId), conflicts: [...state.conflicts, conflict] });
}

export const settleConflict = (state: DraftState, actId: string): DraftState => ({
  ...state,
  conflicts: state.conflicts.filter((conflict) => conflict.act.id !== actId),
});

/** Lays the pending acts on the server's draft again; those it can no longer take are set aside. */
export function relay(state: DraftState): DraftState {
  let scheme = state.server;
  const pending: PendingAct[] = [];
  const conflicts = [...state.conflicts];
  for (const act of state.pending) {
    const applied = applyOperations(scheme, act.operations);
    if (applied.ok) {
      scheme = applied.scheme;
      pending.push(act);
    } else if (act.acknowledged === null) {
      conflicts.push({ act, elements: [applied.refusal.elementId, ...applied.refusal.by], theirs: [] });
    }
  }
  return { ...state, scheme, pending, conflicts };
}

const without = (pending: PendingAct[], actId: string) => pending.filter((act) => act.id !== actId);

const patch = (state: DraftState, actId: string, change: Partial<PendingAct>): DraftState => ({
  ...state,
  pending: state.pending.map((act) => (act.id === actId ? { ...act, ...change } : act)),
});
