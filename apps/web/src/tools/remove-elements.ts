import { hangsOn, type Operation, type Scheme } from "@cornerway/schema";
import { listOfElement, removal } from "./element-operations.ts";
import { padsUnder } from "./pads-under.ts";

/**
 * Takes elements off the drawing with all that hangs on them and the pads that held only the units among them, as one
 * act that one undo brings back whole.
 */
export function removeElements(scheme: Scheme, ids: readonly string[]): Operation[] {
  const going = [...hanging(scheme, ids), ...ids];
  const units = new Set(ids.filter((id) => listOfElement(scheme, id) === "containers"));
  const pads = padsUnder(scheme, units).alone.map(({ id }) => id);
  return [...new Set([...going, ...pads])].flatMap((id) => removal(scheme, id));
}

/** Ids of all that hangs on these and is not among them, what hangs on another thing before it. */
export function hanging(scheme: Scheme, ids: readonly string[]): string[] {
  const chosen = new Set(ids);
  const found = new Set<string>();
  const follow = (id: string) => {
    for (const other of hangsOn(scheme, id)) {
      if (found.has(other) || chosen.has(other)) continue;
      follow(other);
      found.add(other);
    }
  };
  for (const id of ids) follow(id);
  return [...found];
}

/** What one asks about before it goes: all that hangs but the loads and uses that every floor has. */
export const askedAbout = (scheme: Scheme, ids: readonly string[]): string[] =>
  hanging(scheme, ids).filter((id) => {
    const list = listOfElement(scheme, id);
    return list !== "loads" && list !== "uses";
  });
