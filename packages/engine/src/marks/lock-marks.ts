import type { Mark } from "@cornerway/schema";
import type { LockPlace } from "../bearing/lock-places.ts";
import type { Building } from "../geometry/building.ts";
import { rounded } from "../units.ts";
import { markOf } from "./mark-of.ts";

/** Locks, made connections and hold-downs that cannot be put where they are drawn. */
export const lockMarks = ({ unitById }: Building, places: readonly LockPlace[]): Mark[] =>
  places.flatMap(({ lock, contact, why }) => {
    const unit = unitById.get(lock.containerId);
    const fitting = unit?.bottomFittings.find(({ name }) => name === lock.fitting);
    if (why === undefined || unit === undefined) return [];
    const below = contact === undefined || contact.target.on === "ground" ? [] : [contact.target.elementId];
    const { offsetXMm: x, offsetYMm: y } = contact ?? { offsetXMm: 0, offsetYMm: 0 };
    return [
      markOf({
        fact: { kind: "lock-cannot-serve", lockKind: lock.kind, why, offsetMm: rounded(Math.sqrt(x * x + y * y)) },
        verdict: "does not work",
        certainty: "memory",
        elements: [lock.id, lock.containerId, ...below],
        named: 1,
        at: fitting?.at ?? { xMm: unit.frame.xMm, yMm: unit.frame.yMm, zMm: unit.baseZMm },
        basis: lockBasis,
      }),
    ];
  });

const lockBasis =
  "A stock lock goes between fittings with apertures parallel (0° or 180°), hole centres within 10 mm along and 5 mm across (ISO 668 tolerances on size, from memory) and no gap; a hold-down into a pad, strip or slab; a made connection onto anything solid (common practice, no published source).";
