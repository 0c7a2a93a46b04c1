import type { Scheme } from "@cornerway/schema";
import { isReachable } from "../bearing/fitting-contact.ts";
import { topPartsOf } from "../bearing/top-parts.ts";
import { fabricOf } from "../fabric/fabric-of.ts";
import { buildingOf, placeUnit, unitsNear, type Building, type Unit } from "../geometry/building.ts";
import { inOrder } from "../geometry/in-order.ts";
import { touchMm } from "../geometry/tolerances.ts";
import { rounded } from "../units.ts";
import { alignmentKinds, type Alignment, type GapChange } from "./alignment.ts";
import { collides, gapMoves, type GapMove } from "./gap-moves.ts";
import { footprintOf, lengthMm, type Footprint, type Lower } from "./landings.ts";

/**
 * Where the corners of a unit land on fittings of the units below it: all four, or at least two with the others on rails.
 * First what needs no other unit to move, then the gaps between two parallel units below that would make it so; best
 * first. Moves up to 3 m, at the turn it has. Empty where no such place is, or no such unit.
 */
export function alignments(given: Scheme, containerId: string): Alignment[] {
  const building = buildingOf(inOrder(given));
  const unit = building.unitById.get(containerId);
  if (unit === undefined) return [];
  const lowers = unitsNear(building, widened(unit))
    .filter((lower) => lower.id !== unit.id && isReachable(unit.baseZMm - lower.topZMm))
    .map(lowerOf);
  const found = [...shifts(unit, lowers), ...gaps(building, unit, lowers)].filter((one) => isFree(building, unit, one));
  return onceEach(found.toSorted(bestFirst)).slice(0, mostShown);
}

/** Moves no longer than this are offered, mm: more is another arrangement. Common practice, no published source. */
const farthestMm = 3000;
/** What a list on the screen can show. */
const mostShown = 24;

const widened = ({ outline }: Unit) => ({
  ...outline,
  halfUMm: outline.halfUMm + farthestMm,
  halfVMm: outline.halfVMm + farthestMm,
});

const lowerOf = (unit: Unit): Lower => ({ unit, parts: topPartsOf(unit, fabricOf(unit)) });

/** A unit moved in plan, to the whole micrometres a scheme stores. */
const moved = ({ container, openings }: Unit, dxMm: number, dyMm: number): Unit =>
  placeUnit(
    {
      ...container,
      xUm: container.xUm + Math.round(dxMm * 1000),
      yUm: container.yUm + Math.round(dyMm * 1000),
    },
    openings,
  );

/** Every move that puts a corner on a fitting, centred between all that then land. */
const shifts = (unit: Unit, lowers: readonly Lower[]): Alignment[] =>
  lowers.flatMap(({ parts }) =>
    parts.fittings.flatMap((top) =>
      unit.bottomFittings.flatMap(({ name, at }) =>
        name.endsWith("-inner") ? [] : (placed(unit, lowers, top.xMm - at.xMm, top.yMm - at.yMm) ?? []),
      ),
    ),
  );

/** A move with what lands there, centred so that its corners are off as little as may be. */
function placed(unit: Unit, lowers: readonly Lower[], dxMm: number, dyMm: number): Alignment | undefined {
  if (lengthMm(dxMm, dyMm) > farthestMm) return undefined;
  const first = footprintOf(moved(unit, dxMm, dyMm), lowers);
  if (first === undefined) return undefined;
  const count = first.landings.length;
  const x = dxMm - first.landings.reduce((sum, { offXMm }) => sum + offXMm, 0) / count;
  const y = dyMm - first.landings.reduce((sum, { offYMm }) => sum + offYMm, 0) / count;
  const centred = footprintOf(moved(unit, x, y), lowers);
  return centred === undefined || centred.landings.length < count
    ? alignmentOf(first, dxMm, dyMm)
    : alignmentOf(centred, x, y);
}

function alignmentOf({ landings, onRails }: Footprint, dxMm: number, dyMm: number, gap?: GapChange): Alignment {
  return {
    dxMm: rounded(dxMm),
    dyMm: rounded(dyMm),
    landings: landings.map(({ offXMm: _x, offYMm: _y, ...landing }) => ({
      ...landing,
      alongMm: rounded(landing.alongMm),
      acrossMm: rounded(landing.acrossMm),
    })),
    onRails,
    kind: alignmentKinds[Math.max(...landings.map(({ kind }) => alignmentKinds.indexOf(kind)))] ?? "made connection",
    ...(gap === undefined ? {} : { gap }),
  };
}

const gaps = (building: Building, unit: Unit, lowers: readonly Lower[]): Alignment[] =>
  gapMoves(unit, lowers).flatMap((move) => withGap(building, unit, lowers, move) ?? []);

function withGap(building: Building, unit: Unit, lowers: readonly Lower[], move: GapMove): Alignment | undefined {
  const { dxMm, dyMm, stays, moves, moveXMm, moveYMm, nowMm, neededMm } = move;
  if (Math.max(lengthMm(dxMm, dyMm), lengthMm(moveXMm, moveYMm)) > farthestMm) return undefined;
  const there = lowerOf(moved(moves.unit, moveXMm, moveYMm));
  const others = building.units.filter(({ id }) => id !== moves.unit.id && id !== unit.id);
  const footprint = footprintOf(
    moved(unit, dxMm, dyMm),
    lowers.map((lower) => (lower === moves ? there : lower)),
  );
  const landsOn = (id: string) => footprint?.landings.some(({ onId }) => onId === id) === true;
  if (footprint === undefined || !landsOn(stays.unit.id) || !landsOn(moves.unit.id)) return undefined;
  if (collides(there.unit, others)) return undefined;
  return alignmentOf(footprint, dxMm, dyMm, {
    betweenIds: [stays.unit.id, moves.unit.id],
    nowMm: rounded(nowMm),
    neededMm: rounded(neededMm),
    move: { id: moves.unit.id, dxMm: rounded(moveXMm), dyMm: rounded(moveYMm) },
  });
}

/** Nothing else stands where the unit would go. */
const isFree = ({ units }: Building, unit: Unit, { dxMm, dyMm }: Alignment): boolean =>
  !collides(moved(unit, dxMm, dyMm), units);

function bestFirst(a: Alignment, b: Alignment): number {
  return (
    b.landings.length - a.landings.length ||
    alignmentKinds.indexOf(a.kind) - alignmentKinds.indexOf(b.kind) ||
    Number(a.gap !== undefined) - Number(b.gap !== undefined) ||
    travelMm(a) - travelMm(b) ||
    (keyOf(a) < keyOf(b) ? -1 : 1)
  );
}

const travelMm = ({ dxMm, dyMm, gap }: Alignment): number =>
  lengthMm(dxMm, dyMm) + (gap === undefined ? 0 : lengthMm(gap.move.dxMm, gap.move.dyMm));

const keyOf = ({ dxMm, dyMm, gap }: Alignment): string =>
  [dxMm, dyMm, gap?.move.id ?? "", gap?.neededMm ?? 0].join(" ");

/** Places less than a millimetre apart, by the same move below, are one. */
function onceEach(sorted: readonly Alignment[]): Alignment[] {
  const kept: Alignment[] = [];
  for (const one of sorted) {
    const isKnown = kept.some(
      (other) =>
        other.gap?.move.id === one.gap?.move.id &&
        Math.abs((other.gap?.neededMm ?? 0) - (one.gap?.neededMm ?? 0)) < touchMm &&
        lengthMm(other.dxMm - one.dxMm, other.dyMm - one.dyMm) < touchMm,
    );
    if (!isKnown) kept.push(one);
  }
  return kept;
}
