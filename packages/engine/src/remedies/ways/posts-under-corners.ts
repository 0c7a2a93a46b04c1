import type { FittingName, Operation, Scheme } from "@cornerway/schema";
import type { Unit } from "../../geometry/building.ts";
import { toSite } from "../../geometry/place.ts";
import { FreshNames } from "../fresh-names.ts";
import { postsFromGround, type Held } from "../set-posts.ts";
import { postSections, usualPad } from "../usual-steel.ts";
import type { Generator, Ladder, RemedyGround } from "../trial.ts";

type PostSet = { readonly held: readonly Corner[]; readonly under: "corners" | "rail" };
type Corner = Held & { readonly fitting?: FittingName };

/**
 * Posts under what is in the air: both corners of the end, or each corner alone, or the rails two thirds of the way out,
 * each on a pad of its own.
 */
export const postsUnderCorners: Generator = (ground) => underCornersOf(ground, ground.mark.elements[0]);

/** The same for the unit whose load comes down over an opening: on posts of its own it leaves the rail alone. */
export const postsUnderUnitAbove: Generator = (ground) => {
  const [, below, ...above] = ground.mark.elements;
  const ids = above.filter((id) => id !== below && ground.scheme.containers.some((unit) => unit.id === id));
  return ids.flatMap((id) => underCornersOf(ground, id));
};

function underCornersOf(ground: RemedyGround, unitId: string | undefined): readonly Ladder[] {
  const unit = ground.analysis.structure.building.unitById.get(unitId ?? "");
  if (unit === undefined) return [];
  const open = ground.analysis.openCorners(unit.id).filter(({ over }) => over === "air");
  const corners: Corner[] = open.map(({ at, fitting }) => ({
    xMm: at.xMm,
    yMm: at.yMm,
    headZMm: unit.baseZMm,
    fitting,
  }));
  if (corners.length === 0) return [];
  const sets: readonly PostSet[] = [
    ...corners.map((corner): PostSet => ({ held: [corner], under: "corners" })),
    ...(corners.length > 1 ? [{ held: corners, under: "corners" } as const] : []),
    ...furtherIn(ground, unit).map((held): PostSet => ({ held, under: "rail" })),
  ];
  return sets.map(({ held, under }) => ladder(ground, unit, held, under)).filter((rungs) => rungs.length > 0);
}

/** Under both bottom rails, between the last bearing and the corners: from there outwards, as shares of the overhang. */
const SHARES = [2 / 3];

function furtherIn({ analysis }: RemedyGround, unit: Unit): Held[][] {
  const run = analysis.run.units.find(({ unitId }) => unitId === unit.id);
  const open = analysis.openCorners(unit.id);
  const ends = (["front", "door"] as const).filter((end) => open.some(({ fitting }) => fitting.startsWith(end)));
  const { holeSpacingLengthwiseMm, bottomRailWidthMm, widthMm, baseAboveFittingMm } = unit.dimensions;
  return ends.flatMap((end) => {
    const sign = end === "front" ? -1 : 1;
    const reaches = (run?.contacts ?? []).map(({ localXMm }) => localXMm * sign);
    if (reaches.length === 0) return [];
    const from = Math.max(...reaches);
    return SHARES.map((share) =>
      ([-1, 1] as const).map((side): Held => {
        const xMm = sign * (from + share * (holeSpacingLengthwiseMm / 2 - from));
        const yMm = side * (widthMm / 2 - bottomRailWidthMm / 2);
        const at = toSite(unit.frame, { xMm, yMm, zMm: 0 });
        return { xMm: at.xMm, yMm: at.yMm, headZMm: unit.baseZMm + baseAboveFittingMm };
      }),
    );
  });
}

function ladder(
  { scheme, analysis }: RemedyGround,
  unit: Unit,
  held: readonly Corner[],
  under: "corners" | "rail",
): Ladder {
  const names = new FreshNames(scheme);
  const [section] = postSections;
  const set = postsFromGround(scheme, analysis.structure.building, names, held, section, usualPad);
  if (set === undefined) return [];
  const { postIds, pads } = set;
  const operations = [...set.operations, ...tiedHeads(scheme, names, unit.id, held)];
  const padMm = pads === 0 ? null : usualPad.sideMm;
  return [{ change: { kind: "posts", unitId: unit.id, postIds, under, section, padMm, header: null }, operations }];
}

/** A post pinned at both ends stands only where its head is made fast to the corner it holds. */
function tiedHeads({ locks }: Scheme, names: FreshNames, containerId: string, held: readonly Corner[]): Operation[] {
  return held.flatMap(({ fitting }): Operation[] => {
    const isTaken = locks.some((lock) => lock.containerId === containerId && lock.fitting === fitting);
    if (fitting === undefined || isTaken) return [];
    return [{ kind: "lock.set", lock: { ...names.next("L"), containerId, fitting, kind: "made connection" } }];
  });
}
