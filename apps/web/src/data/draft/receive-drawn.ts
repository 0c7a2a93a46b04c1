import { applyOperations, touchedByAll } from "@cornerway/schema";
import type { Draft, Operation, Scheme } from "@cornerway/schema";
import { relay, setAside } from "./draft-state.ts";
import type { DraftState, PendingAct } from "./draft-state.ts";

/** One entry of the record that drew something. */
export interface DrawnEntry {
  actId: string;
  draftNumber: number;
  contentDigest: string;
  operations: Operation[];
  by: string;
}

/**
 * The draft after an entry of the record. Acts of this page that touch nothing of it are re-based; those that do, and
 * are not already on their way, are set aside with both versions. Null when an entry between is missing.
 */
export function receiveDrawn(state: DraftState, entry: DrawnEntry): DraftState | null {
  if (entry.draftNumber <= state.number) return state;
  if (entry.draftNumber > state.number + 1) return null;
  const applied = applyOperations(state.server, entry.operations);
  if (!applied.ok) return null;
  const own = state.pending.some((act) => act.id === entry.actId);
  const moved: DraftState = {
    ...state,
    number: entry.draftNumber,
    contentDigest: entry.contentDigest,
    movesSinceRevision: state.movesSinceRevision + 1,
    server: applied.scheme,
    pending: state.pending.filter((act) => act.id !== entry.actId),
  };
  return relay(own ? moved : setDependentAside(moved, state.server, entry));
}

/** The draft read anew from the service; what this page drew since goes back on top of it. */
export function replaceServer(state: DraftState, draft: Draft): DraftState {
  const pending = state.pending.filter((act) => act.acknowledged === null || act.acknowledged > draft.number);
  const { number, contentDigest, movesSinceRevision, scheme: server } = draft;
  return relay({ ...state, number, contentDigest, movesSinceRevision, server, pending });
}

function setDependentAside(state: DraftState, before: Scheme, entry: DrawnEntry): DraftState {
  const theirs = [{ draftNumber: entry.draftNumber, by: entry.by, operations: entry.operations }];
  let after = state;
  for (const act of state.pending.filter((pending) => !pending.sent && pending.acknowledged === null)) {
    const shared = sharedElements(before, act, entry);
    if (shared.length > 0) after = setAside(after, act.id, shared, theirs);
  }
  return after;
}

function sharedElements(scheme: Scheme, act: PendingAct, entry: DrawnEntry): string[] {
  const mine = touchedByAll(scheme, act.operations);
  const others = touchedByAll(scheme, entry.operations);
  const clash = [
    ...mine.writes.filter((key) => others.writes.includes(key) || others.reads.includes(key)),
    ...mine.reads.filter((key) => others.writes.includes(key)),
  ];
  return [...new Set(clash)];
}
