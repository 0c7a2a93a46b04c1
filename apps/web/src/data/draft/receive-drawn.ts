import { applyOperations, touchedByAll } from "@cornerway/schema";
import type { Draft, Operation, Scheme } from "@cornerway/schema";
import { changedKeys } from "./changed-keys.ts";
import { relay, setAside } from "./draft-state.ts";
import type { DraftState, PendingAct, Theirs } from "./draft-state.ts";

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
  if (own) return relay(moved);
  const touched = touchedByAll(state.server, entry.operations);
  const { draftNumber, by, operations } = entry;
  return setDependentAside(moved, touched, [{ draftNumber, by, operations }]);
}

/**
 * The draft read anew from the service; what this page drew since goes back on top of it. What changed in between is
 * found by comparison, since no entry told of it: acts never sent that touch it are set aside.
 */
export function replaceServer(state: DraftState, draft: Draft): DraftState {
  if (draft.number < state.number) return state;
  const { number, contentDigest, movesSinceRevision, scheme: server } = draft;
  const expected = state.pending.filter(({ base }) => base !== null).reduce(layIfItGoes, state.server);
  const writes = changedKeys([state.server, expected], server);
  const pending = state.pending.filter((act) => act.acknowledged === null || act.acknowledged > number);
  const anew = { ...state, number, contentDigest, movesSinceRevision, server, pending };
  return setDependentAside(anew, { reads: [], writes }, []);
}

/** Sets aside the acts never sent that touch what is given, and lays the others again. */
export function setDependentAside(
  state: DraftState,
  touched: { reads: readonly string[]; writes: readonly string[] },
  theirs: Theirs,
): DraftState {
  let after = state;
  for (const act of state.pending.filter(({ base }) => base === null)) {
    const elements = sharedKeys(state.scheme, act, touched);
    if (elements.length > 0) after = setAside(after, act.id, { elements, theirs });
  }
  return relay(after);
}

const layIfItGoes = (scheme: Scheme, { operations }: PendingAct): Scheme => {
  const applied = applyOperations(scheme, operations);
  return applied.ok ? applied.scheme : scheme;
};

/** `scheme` is the one on the screen when the act was drawn. */
function sharedKeys(
  scheme: Scheme,
  act: PendingAct,
  others: { reads: readonly string[]; writes: readonly string[] },
): string[] {
  const mine = touchedByAll(scheme, act.operations);
  const clash = [
    ...mine.writes.filter((key) => others.writes.includes(key) || others.reads.includes(key)),
    ...mine.reads.filter((key) => others.writes.includes(key)),
  ];
  return [...new Set(clash)];
}
