import type { FittingName } from "@cornerway/schema";
import type { Rail } from "../fabric/fabric-of.ts";
import type { Unit } from "../geometry/building.ts";
import type { HeadSupport } from "./head-supports.ts";
import { beamUnderMm, type RailBeam } from "./rail-beams.ts";

/** What holds up top rails besides the corner posts. */
export type RailHolds = { readonly supports: readonly HeadSupport[]; readonly railBeams: readonly RailBeam[] };

/** What a top rail hands a load to: the post under a corner fitting, an added post or an added beam. */
export type RailEnd =
  | { readonly to: "corner"; readonly fitting: FittingName; readonly uMm: number }
  | { readonly to: "post"; readonly postId: string; readonly uMm: number }
  | { readonly to: "beam"; readonly beamId: string; readonly beamUMm: number; readonly uMm: number };

export type RailShare = { readonly end: RailEnd; readonly forceKn: number };

/**
 * A load on a top rail, carried along it to what holds the rail up on either side, by the lever rule: statics of a
 * simply supported span. Over a beam that runs along under the rail it goes straight into that. Where a cut leaves support
 * on one side only, all of it goes there; none left, none returned.
 */
export function railLever(
  unit: Unit,
  piece: { readonly u0: number; readonly u1: number } | undefined,
  rail: Rail,
  uMm: number,
  forceKn: number,
  holds: RailHolds,
): RailShare[] {
  if (piece === undefined) return [];
  const under = holds.railBeams.find(
    (one) => one.unitId === unit.id && one.rail === rail && one.u0 <= uMm && uMm <= one.u1,
  );
  if (under !== undefined) return [{ end: beamEnd(under, uMm), forceKn }];
  const ends = railEnds(unit, rail, holds).filter((end) => end.uMm >= piece.u0 && end.uMm <= piece.u1);
  const before = ends.filter((end) => end.uMm <= uMm).at(-1);
  const after = ends.find((end) => end.uMm >= uMm);
  if (before === undefined) return after === undefined ? [] : [{ end: after, forceKn }];
  if (after === undefined || after.uMm === before.uMm) return [{ end: before, forceKn }];
  const share = (uMm - before.uMm) / (after.uMm - before.uMm);
  return [
    { end: before, forceKn: forceKn * (1 - share) },
    { end: after, forceKn: forceKn * share },
  ];
}

const beamEnd = (under: RailBeam, uMm: number): RailEnd => ({
  to: "beam",
  beamId: under.beam.id,
  beamUMm: beamUnderMm(under, uMm),
  uMm,
});

function railEnds(unit: Unit, rail: Rail, { supports, railBeams }: RailHolds): RailEnd[] {
  const { lengthMm, widthMm } = unit.dimensions;
  const corners = unit.topFittings
    .filter(({ name }) => name.includes(rail))
    .map(({ name, localXMm, localYMm }): RailEnd => {
      const uMm = rail === "left" || rail === "right" ? localXMm + lengthMm / 2 : localYMm + widthMm / 2;
      return { to: "corner", fitting: name, uMm };
    })
    .filter((end) => rail === "left" || rail === "right" || !isInner(end));
  const posts = supports
    .filter((support) => support.unitId === unit.id && support.rail === rail)
    .map(({ postId, uMm }): RailEnd => ({ to: "post", postId, uMm }));
  const beams = railBeams
    .filter((one) => one.unitId === unit.id && one.rail === rail)
    .flatMap((one) => [beamEnd(one, one.u0), beamEnd(one, one.u1)]);
  return [...corners, ...posts, ...beams].toSorted((a, b) => a.uMm - b.uMm);
}

const isInner = (end: RailEnd): boolean => end.to === "corner" && end.fitting.endsWith("-inner");
