import type { Scheme } from "@cornerway/schema";
import { analyse } from "../load-path/analysis.ts";

/**
 * What the same containers stacked plainly have as well: pads under their corners, and stock locks that serve between
 * fittings one above the other. Ids of the elements.
 */
export function plainStack(scheme: Scheme): ReadonlySet<string> {
  const { bearings, locks } = analyse(scheme);
  const pads = bearings.flatMap(({ contacts }) =>
    contacts.flatMap(({ fitting, target }) => (fitting !== undefined && target.on === "pad" ? [target.elementId] : [])),
  );
  const stock = locks.filter(({ lock, why }) => lock.kind === "lock" && why === undefined).map(({ lock }) => lock.id);
  return new Set([...pads, ...stock]);
}
