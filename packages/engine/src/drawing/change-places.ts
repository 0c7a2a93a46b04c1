import type { ElementChange, Scheme } from "@cornerway/schema";
import { storeysOf } from "../geometry/storeys.ts";
import type { PaperRect } from "./corrugation.ts";
import { partsOnElevation, partsOnPlan } from "./part-places.ts";
import type { Side } from "./side.ts";

/** Where a change shows on one view, mm on its paper; on a plan `z` runs up the paper. */
export type PlacedChange = {
  id: string;
  /** The part of the element that was not there before: what a yellow pencil goes over. All of it where it is new. */
  fresh: PaperRect;
  /** Where the element was, for one that was taken away or stands otherwise; null for a new one. */
  was: PaperRect | null;
  /** True where this view shows it no more. */
  gone: boolean;
};

/** The changes an elevation shows. */
export function changesOnElevation(
  changes: readonly ElementChange[],
  before: Scheme,
  after: Scheme,
  side: Side,
): PlacedChange[] {
  return placed(changes, partsOnElevation(before, side), partsOnElevation(after, side));
}

/** The changes the plan of one storey of the later scheme shows. */
export function changesOnPlan(
  changes: readonly ElementChange[],
  before: Scheme,
  after: Scheme,
  storey: number,
): PlacedChange[] {
  const then = storeyLike(before, after, storey);
  const was = then === null ? new Map<string, PaperRect>() : partsOnPlan(before, then);
  return placed(changes, was, partsOnPlan(after, storey));
}

/** Storeys of two schemes are the same where their levels lie nearer than this, mm: half a high cube's 2896. */
const sameStoreyMm = 1448;

/** The storey of one scheme at the level of a storey of another; null where it has none there. */
export function storeyLike(scheme: Scheme, other: Scheme, storey: number): number | null {
  const levelMm = storeysOf(other).find(({ index }) => index === storey)?.levelMm ?? other.site.groundZUm / 1000;
  return storeysOf(scheme).find((each) => Math.abs(each.levelMm - levelMm) < sameStoreyMm)?.index ?? null;
}

type Parts = ReadonlyMap<string, PaperRect>;

function placed(changes: readonly ElementChange[], before: Parts, after: Parts): PlacedChange[] {
  return changes.flatMap((change): PlacedChange[] => {
    const was = change.before === null ? undefined : before.get(change.id);
    const is = change.after === null ? undefined : after.get(change.id);
    if (is !== undefined) return [{ id: change.id, fresh: freshPart(is, was), was: was ?? null, gone: false }];
    return was === undefined ? [] : [{ id: change.id, fresh: was, was, gone: true }];
  });
}

/** Parts of a rectangle thinner than this are not told apart on paper, mm. */
const leastMm = 1;

/** What of a rectangle was not covered by where it was: the strip it gained where it gained one, else all of it. */
export function freshPart(is: PaperRect, was: PaperRect | undefined): PaperRect {
  if (was === undefined || !meet(is, was)) return is;
  const gained = [
    { ...is, u1Mm: was.u0Mm },
    { ...is, u0Mm: was.u1Mm },
    { ...is, z1Mm: was.z0Mm },
    { ...is, z0Mm: was.z1Mm },
  ].filter(({ u0Mm, u1Mm, z0Mm, z1Mm }) => u1Mm - u0Mm > leastMm && z1Mm - z0Mm > leastMm);
  const [strip, ...others] = gained;
  return strip === undefined || others.length > 0 ? is : strip;
}

const meet = (one: PaperRect, other: PaperRect): boolean =>
  one.u0Mm < other.u1Mm && one.u1Mm > other.u0Mm && one.z0Mm < other.z1Mm && one.z1Mm > other.z0Mm;
