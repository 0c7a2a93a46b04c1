import { placeContainer } from "@cornerway/engine";
import type { Container, FittingName, Lock, PointMm, Scheme } from "@cornerway/schema";
import { newElementId } from "./new-element-id.ts";
import { nextTag } from "./next-tag.ts";
import { carries } from "./pads-follow.ts";

/** A bottom fitting that nothing joins yet, and what a joint there would be. */
export interface BareFitting {
  fitting: FittingName;
  at: PointMm;
  kind: Lock["kind"];
}

/** Hole over hole within this, a stock lock may serve, mm; the engine judges it to the lock's own tolerance. */
const nearMm = 50;
const sameHeightMm = 2;

/** The bottom fittings of a unit without a lock, each with the joint that what is under it suggests. */
export function bareFittings(scheme: Scheme, unit: Container): BareFitting[] {
  const joined = new Set(scheme.locks.filter(({ containerId }) => containerId === unit.id).map((lock) => lock.fitting));
  const tops = scheme.containers
    .filter(({ id }) => id !== unit.id)
    .flatMap((other) => placeContainer(other).topFittings);
  return placeContainer(unit)
    .bottomFittings.filter(({ name }) => !joined.has(name))
    .map(({ name, at }) => ({
      fitting: name,
      at,
      kind: kindAt(
        scheme,
        at,
        tops.map((top) => top.at),
      ),
    }));
}

function kindAt(scheme: Scheme, at: PointMm, tops: readonly PointMm[]): Lock["kind"] {
  if (scheme.pads.some((pad) => carries(pad, at))) return "hold-down";
  const onFitting = tops.some(
    (top) => Math.abs(top.zMm - at.zMm) <= sameHeightMm && Math.hypot(top.xMm - at.xMm, top.yMm - at.yMm) <= nearMm,
  );
  return onFitting ? "lock" : "made connection";
}

export const newLock = (scheme: Scheme, unit: Container, { fitting, kind }: BareFitting): Lock => ({
  id: newElementId("k"),
  tag: nextTag(scheme, "L"),
  containerId: unit.id,
  fitting,
  kind,
});

/** Locks for all bare fittings of a unit, each with a label of its own. */
export function newLocks(scheme: Scheme, unit: Container): Lock[] {
  let now = scheme;
  return bareFittings(scheme, unit).map((bare) => {
    const lock = newLock(now, unit, bare);
    now = { ...now, locks: [...now.locks, lock] };
    return lock;
  });
}
