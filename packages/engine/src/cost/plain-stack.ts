import type { Scheme } from "@cornerway/schema";
import { lockPlaces } from "../bearing/lock-places.ts";
import { structureOf } from "../bearing/structure.ts";
import { unitBearings } from "../bearing/unit-bearings.ts";
import { buildingOf } from "../geometry/building.ts";

/**
 * What the same containers stacked plainly have as well: pads under their corners, and stock locks that serve between
 * fittings one above the other. Ids of the elements. Found by geometry alone: fittings on fittings and on pads ask for no
 * other steel.
 */
export function plainStack(scheme: Scheme): ReadonlySet<string> {
  if (scheme.pads.length === 0 && scheme.locks.length === 0) return new Set();
  const building = buildingOf(scheme);
  const bearings = unitBearings(structureOf(building), new Set(), () => []);
  const pads = bearings.flatMap(({ contacts }) =>
    contacts.flatMap(({ fitting, target }) => (fitting !== undefined && target.on === "pad" ? [target.elementId] : [])),
  );
  const stock = lockPlaces(building.locks, bearings).filter(
    ({ lock, why }) => lock.kind === "lock" && why === undefined,
  );
  return new Set([...pads, ...stock.map(({ lock }) => lock.id)]);
}
