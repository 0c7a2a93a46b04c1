import { elementsOf, touchedByAll } from "@cornerway/schema";
import type { Operation, Scheme } from "@cornerway/schema";

/** One act of this page that can be taken back. */
export interface OwnAct {
  id: string;
  operations: Operation[];
  inverse: Operation[];
  /** Each element the act wrote, as the act left it; null where it left nothing. */
  left: Record<string, string | null>;
}

export interface OwnHistory {
  done: OwnAct[];
  undone: OwnAct[];
}

export const emptyHistory: OwnHistory = { done: [], undone: [] };

const most = 200;

/** A new act ends the way forward. */
export const remember = (history: OwnHistory, act: OwnAct): OwnHistory => ({
  done: [...history.done.slice(1 - most), act],
  undone: [],
});

/** An act that can no longer be taken back or drawn again. */
export const forget = ({ done, undone }: OwnHistory, actId: string): OwnHistory => ({
  done: done.filter(({ id }) => id !== actId),
  undone: undone.filter(({ id }) => id !== actId),
});

/** What an act wrote, as it stands after it. */
export function ownAct(
  id: string,
  operations: Operation[],
  inverse: Operation[],
  before: Scheme,
  after: Scheme,
): OwnAct {
  const writes = touchedByAll(before, operations).writes.filter((key) => !key.startsWith("tag:"));
  return { id, operations, inverse, left: Object.fromEntries(writes.map((key) => [key, asText(after, key)])) };
}

/** The elements someone changed since the act; empty when it can be taken back. */
export const changedSince = (act: OwnAct, scheme: Scheme): string[] =>
  Object.entries(act.left)
    .filter(([key, left]) => asText(scheme, key) !== left)
    .map(([key]) => key);

function asText(scheme: Scheme, key: string): string | null {
  const part = key === "site" || key === "basis" ? scheme[key] : undefined;
  const element = part ?? elementsOf(scheme).find(({ id }) => id === key);
  return element === undefined ? null : JSON.stringify(Object.entries(element).sort(([a], [b]) => (a < b ? -1 : 1)));
}
