import { placeContainer } from "@cornerway/engine";
import type { PlacedContainer } from "@cornerway/engine";
import type { Container, Scheme } from "@cornerway/schema";
import { boxOf } from "./footprint.ts";

export interface Snapped {
  unit: Container;
  /** What it caught on, by id; empty where it lies free on the 10 mm grid. */
  caught: string[];
}

/** Two units share a level when their feet are closer in height than this. */
const sameLevelMm = 1000;
const contactMm = 2;
const gridUm = 10_000;

interface Catch {
  byMm: number;
  id: string;
}

/**
 * Draws a unit to the fittings of what lies below it and to the fittings and sides of what stands beside it, along
 * each site axis by itself, when within `reachMm`; elsewhere it falls on the 10 mm grid.
 */
export function snapUnit(scheme: Scheme, unit: Container, reachMm: number): Snapped {
  const placed = placeContainer(unit);
  const others = scheme.containers.filter((other) => other.id !== unit.id).map(placeContainer);
  const below = others.filter((other) => Math.abs(other.topZMm - placed.baseZMm) <= contactMm);
  const beside = others.filter((other) => Math.abs(other.baseZMm - placed.baseZMm) < sameLevelMm);
  const near = [...below, ...beside].filter((other) => isNear(placed, other, reachMm));
  const x = nearest(
    near.flatMap((other) => catches(placed, other, "x")),
    reachMm,
  );
  const y = nearest(
    near.flatMap((other) => catches(placed, other, "y")),
    reachMm,
  );
  return {
    unit: { ...unit, xUm: landed(unit.xUm, x), yUm: landed(unit.yUm, y) },
    caught: [...new Set([x, y].flatMap((caught) => (caught === null ? [] : [caught.id])))],
  };
}

function catches(placed: PlacedContainer, other: PlacedContainer, axis: "x" | "y"): Catch[] {
  const key = axis === "x" ? "xMm" : "yMm";
  const onFittings = placed.bottomFittings.flatMap((foot) =>
    other.topFittings.map((target) => ({ byMm: target.at[key] - foot.at[key], id: other.id })),
  );
  if (!isQuarterTurned(placed) || !isQuarterTurned(other)) return onFittings;
  const [lowSide, highSide] = axis === "x" ? (["west", "east"] as const) : (["south", "north"] as const);
  const own = boxOf(placed);
  const its = boxOf(other);
  const onSides = [its[highSide] - own[lowSide], its[lowSide] - own[highSide]].map((byMm) => ({ byMm, id: other.id }));
  return [...onFittings, ...onSides];
}

const nearest = (all: Catch[], reachMm: number): Catch | null =>
  all.reduce<Catch | null>((best, next) => {
    if (Math.abs(next.byMm) > reachMm) return best;
    return best === null || Math.abs(next.byMm) < Math.abs(best.byMm) ? next : best;
  }, null);

const landed = (um: number, caught: Catch | null): number =>
  caught === null ? Math.round(um / gridUm) * gridUm : Math.round(um + caught.byMm * 1000);

const isQuarterTurned = ({ frame }: PlacedContainer) => frame.turnMdeg % 90_000 === 0;

function isNear(a: PlacedContainer, b: PlacedContainer, reachMm: number): boolean {
  const first = boxOf(a);
  const second = boxOf(b);
  const gapX = Math.max(first.west - second.east, second.west - first.east);
  const gapY = Math.max(first.south - second.north, second.south - first.north);
  return gapX <= reachMm && gapY <= reachMm;
}
