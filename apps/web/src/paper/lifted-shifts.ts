import { collectionNames, type PointMm, type Scheme } from "@cornerway/schema";
import { elementPlace } from "../notes/element-place.ts";

/**
 * How far what is drawn lies from where it is now, mm in the site, by element id; null for what is there no longer as it is
 * drawn. What hangs on a unit goes along with it.
 */
export function liftedShifts(drawn: Scheme, now: Scheme): ReadonlyMap<string, PointMm | null> {
  const shifts = new Map<string, PointMm | null>();
  for (const id of changedIds(drawn, now)) {
    const from = elementPlace(drawn, id);
    if (from !== null) shifts.set(id, isReshaped(drawn, now, id) ? null : between(from, elementPlace(now, id)));
  }
  for (const { id, containerId } of [...drawn.openings, ...drawn.locks, ...drawn.freeLoads]) {
    const shift = shifts.get(containerId);
    if (shift !== undefined && !shifts.has(id)) shifts.set(id, shift);
  }
  return shifts;
}

function isReshaped(drawn: Scheme, now: Scheme, id: string): boolean {
  const was = drawn.openings.find((opening) => opening.id === id);
  const is = now.openings.find((opening) => opening.id === id);
  if (was === undefined || is === undefined) return false;
  return was.widthUm !== is.widthUm || was.heightUm !== is.heightUm;
}

/** Lists keep the elements nobody touched as they are, so what is not the very same was changed. */
const changedIds = (drawn: Scheme, now: Scheme): string[] =>
  collectionNames.flatMap((name) => {
    if (drawn[name] === now[name]) return [];
    const kept = new Set<unknown>(now[name]);
    return drawn[name].flatMap((element) => (kept.has(element) ? [] : [element.id]));
  });

const between = (from: PointMm, to: PointMm | null): PointMm | null =>
  to === null ? null : { xMm: to.xMm - from.xMm, yMm: to.yMm - from.yMm, zMm: to.zMm - from.zMm };
