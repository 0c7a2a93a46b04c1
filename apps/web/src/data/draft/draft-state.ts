import { applyOperations } from "@cornerway/schema";
import type { Draft, DraftActDone, Operation, Problem, Refusal, Scheme } from "@cornerway/schema";
import type { Kept } from "./kept.ts";

/** An act of this page that the service has not yet put in its order. */
export interface PendingAct {
  id: string;
  operations: Operation[];
  undoes: string | null;
  /**
   * The draft number it was first sent on; null while it never was. Sent again, an act is the same to the letter, so that
   * the service knows it: whether the first sending arrived is not known here.
   */
  base: number | null;
  /** The number the service gave it, when that came before the entries between. */
  acknowledged: number | null;
}

export type Theirs = NonNullable<Problem["conflict"]>["theirs"];

/** An act set aside: it stays here, as a ghost, until mine or theirs is chosen. */
export interface Conflict {
  act: PendingAct;
  elements: string[];
  theirs: Theirs;
  /** What the service said where it would not take the act; null where others drew on the same thing first. */
  why: string | null;
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

/** What another page left goes on top; what the draft read meanwhile holds already is dropped. */
export function takeUp(state: DraftState, { pending, conflicts }: Kept): DraftState {
  const known = new Set([...state.pending, ...state.conflicts.map(({ act }) => act)].map(({ id }) => id));
  const waiting = pending.filter(({ acknowledged }) => acknowledged === null || acknowledged > state.number);
  return relay({
    ...state,
    pending: [...state.pending, ...waiting.filter(({ id }) => !known.has(id))],
    conflicts: [...state.conflicts, ...conflicts.filter(({ act }) => !known.has(act.id))],
  });
}

/** Lays one act of this page on the draft, or says why the scheme cannot take it. */
export function drawAct(state: DraftState, act: Pick<PendingAct, "id" | "operations" | "undoes">): Drawn {
  const applied = applyOperations(state.scheme, act.operations);
  if (!applied.ok) return applied;
  const pending = [...state.pending, { ...act, base: null, acknowledged: null }];
  return { ok: true, state: { ...state, pending, scheme: applied.scheme }, inverse: applied.inverse };
}

/** The service took the act in: it becomes part of the server's draft at once when nothing lies between. */
export function acknowledge(state: DraftState, actId: string, done: DraftActDone): DraftState {
  const act = state.pending.find((pending) => pending.id === actId);
  if (act === undefined || done.draftNumber <= state.number) return withdraw(state, actId);
  const applied = applyOperations(state.server, act.operations);
  if (done.draftNumber > state.number + 1 || !applied.ok)
    return patch(state, actId, { acknowledged: done.draftNumber });
  return relay({
    ...state,
    number: done.draftNumber,
    contentDigest: done.contentDigest,
    movesSinceRevision: state.movesSinceRevision + 1,
    server: applied.scheme,
    pending: without(state.pending, [actId]),
  });
}

/** The act goes out, on the draft as it stands here; one that went out before keeps what it stood on. */
export const markSent = (state: DraftState, actId: string): DraftState =>
  patch(state, actId, { base: state.pending.find(({ id }) => id === actId)?.base ?? state.number });

/** Takes an act of this page off the draft. */
export const withdraw = (state: DraftState, actId: string): DraftState =>
  relay({ ...state, pending: without(state.pending, [actId]) });

/**
 * Sets an act aside as a ghost, with what others did to the same thing. Acts that take it back, and those that take these
 * back, go with it: an act and its undo come to nothing, an act undone and drawn again is the act.
 */
export function setAside(
  state: DraftState,
  actId: string,
  { elements, theirs = [], why = null }: { elements: string[]; theirs?: Theirs; why?: string | null },
): DraftState {
  const act = state.pending.find((pending) => pending.id === actId);
  if (act === undefined) return state;
  const chain = undoChain(state.pending, actId);
  const conflict = { act: { ...act, base: null, acknowledged: null }, elements, theirs, why };
  const standsStill = chain.length % 2 === 0;
  return relay({
    ...state,
    pending: without(state.pending, [actId, ...chain]),
    conflicts: standsStill ? [...state.conflicts, conflict] : state.conflicts,
  });
}

export const settleConflict = (state: DraftState, actId: string): DraftState => ({
  ...state,
  conflicts: state.conflicts.filter((conflict) => conflict.act.id !== actId),
});

/**
 * Lays the pending acts on the server's draft again; those it can no longer take are set aside. One that may have arrived
 * before waits for the service's word: it may be in the server's draft already.
 */
export function relay(state: DraftState): DraftState {
  let scheme = state.server;
  for (const act of state.pending) {
    const applied = applyOperations(scheme, act.operations);
    if (applied.ok) scheme = applied.scheme;
    else if (act.base === null)
      return setAside(state, act.id, { elements: [applied.refusal.elementId, ...applied.refusal.by] });
  }
  return { ...state, scheme };
}

function undoChain(pending: readonly PendingAct[], actId: string): string[] {
  const next = pending.find(({ undoes }) => undoes === actId);
  return next === undefined ? [] : [next.id, ...undoChain(pending, next.id)];
}

const without = (pending: PendingAct[], ids: readonly string[]) => pending.filter(({ id }) => !ids.includes(id));

const patch = (state: DraftState, actId: string, change: Partial<PendingAct>): DraftState => ({
  ...state,
  pending: state.pending.map((act) => (act.id === actId ? { ...act, ...change } : act)),
});
