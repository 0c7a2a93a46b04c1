import { emptyScheme, type Container, type Scheme } from "@cornerway/schema";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { placeContainer, solidCorners } from "../../src/geometry/place.ts";
import { drawingOrder } from "../../src/drawing/drawing-order.ts";
import { addedSolids } from "../../src/drawing/added-solids.ts";
import { isometricEye, onPicture, pictureEye, type PictureEye } from "../../src/drawing/picture-eye.ts";
import { convexHull } from "../../src/drawing/convex-hull.ts";
import type { Solid } from "../../src/drawing/solid.ts";
import { plainOrder } from "./plain-order.ts";
import { randomScheme } from "../../../../tests/support/random-scheme.ts";

type V = [number, number, number];

const vector = ({ xMm, yMm, zMm }: { xMm: number; yMm: number; zMm: number }): V => [xMm, yMm, zMm];
const corner = ({ corners }: Solid, at: number): V => vector(corners[at] ?? { xMm: 0, yMm: 0, zMm: 0 });
const minus = (a: V, b: V): V => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const times = (a: V, b: V): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/**
 * Where a line through `from` along `way` is inside a box of eight corners, as lengths along it; null where it misses.
 * Worked out by the slabs along the box's own three edges (Kay and Kajiya, 1986), not by the planes the order is told by.
 */
function within(solid: Solid, from: V, way: V): [number, number] | null {
  const first = corner(solid, 0);
  let [enters, leaves] = [-Infinity, Infinity];
  for (const next of [1, 3, 4]) {
    const edge = minus(corner(solid, next), first);
    const [start, speed, long] = [times(minus(from, first), edge), times(way, edge), times(edge, edge)];
    if (Math.abs(speed) < 1e-9) {
      if (start < 0 || start > long) return null;
      continue;
    }
    const [a, b] = [-start / speed, (long - start) / speed];
    enters = Math.max(enters, Math.min(a, b));
    leaves = Math.min(leaves, Math.max(a, b));
  }
  return enters < leaves ? [enters, leaves] : null;
}

/** How far two boxes run into each other along the direction in which it is least, mm (separating axes of two boxes). */
function overlapMm(a: Solid, b: Solid): number {
  const edges = (solid: Solid) => [1, 3, 4].map((at) => unit(minus(corner(solid, at), corner(solid, 0))));
  const [p, q] = [edges(a), edges(b)];
  const axes = [...p, ...q, ...p.flatMap((one) => q.map((other) => cross(one, other)))]
    .filter((axis) => times(axis, axis) > 1e-6)
    .map(unit);
  const depths = axes.map((axis) => {
    const range = (solid: Solid) => solid.corners.map((at) => times(vector(at), axis));
    const [of, other] = [range(a), range(b)];
    return Math.min(Math.max(...of), Math.max(...other)) - Math.max(Math.min(...of), Math.min(...other));
  });
  return Math.min(...depths);
}

const cross = (a: V, b: V): V => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];

function unit(a: V): V {
  const long = Math.sqrt(times(a, a));
  return [a[0] / long, a[1] / long, a[2] / long];
}

/** Those that do not run into one before them: a generated scheme may put one thing in another, where no order is right. */
const apart = (solids: readonly Solid[]): Solid[] =>
  solids.reduce<Solid[]>((kept, next) => (kept.some((one) => overlapMm(one, next) > 12) ? kept : [...kept, next]), []);

const boxOf = (unit: Container): Solid => ({ id: unit.id, corners: solidCorners(placeContainer(unit)) });

const solidsOf = (scheme: Scheme): Solid[] => [
  ...scheme.containers.map(boxOf),
  // A pad level with the ground is only its top, which hides nothing.
  ...addedSolids(scheme).filter(({ corners }) => corners[0]?.zMm !== corners[4]?.zMm),
];

/** Solids that touch may run a little into each other: along a slanting line of sight by this much, mm. */
const doubtMm = 80;

/** Places on paper where what is drawn last is not what is nearest to the eye. */
function wrongPlaces(solids: readonly Solid[], eye: PictureEye): { places: number; wrong: string[] } {
  const order = drawingOrder(solids, eye);
  const way = vector(eye.towards);
  const long = Math.sqrt(times(way, way));
  const wrong: string[] = [];
  let places = 0;
  for (const solid of order) {
    const hull = convexHull(solid.corners.map((at) => onPicture(eye, at)));
    expect(hull.length).toBeGreaterThan(2);
    for (const share of [0.03, 0.2, 0.5, 0.8, 0.97])
      for (const start of solid.corners) {
        const other = solid.corners[(solid.corners.indexOf(start) + 6) % 8] ?? start;
        const [from, way0] = [vector(start), minus(vector(other), vector(start))];
        const at: V = [from[0] + way0[0] * share, from[1] + way0[1] * share, from[2] + way0[2] * share];
        const hits = order.flatMap((each, index) => {
          const span = within(each, at, way);
          return span === null ? [] : [{ index, id: each.id, nearest: span[1] * long }];
        });
        if (hits.length < 2) continue;
        places += 1;
        const drawnLast = hits.reduce((a, b) => (b.index > a.index ? b : a));
        const nearest = hits.reduce((a, b) => (b.nearest > a.nearest ? b : a));
        if (nearest.nearest - drawnLast.nearest > doubtMm) wrong.push(`${drawnLast.id} over ${nearest.id}`);
      }
  }
  return { places, wrong };
}

/** Containers set down anywhere in a yard, in one another as well. */
const manyBoxes = fc
  .array(
    fc.record({
      xUm: fc.integer({ min: 0, max: 40 }).map((m) => m * 1_000_000),
      yUm: fc.integer({ min: 0, max: 12 }).map((row) => row * 2_438_000),
      zUm: fc.integer({ min: 0, max: 3 }).map((level) => level * 2_591_000),
      turnMdeg: fc.constantFrom(0, 0, 0, 90_000, 90_000, 17_000),
    }),
    { minLength: 20, maxLength: 40 },
  )
  .map((places) =>
    places.map((place, at) => ({ id: `${at}`, tag: `${at}`, type: "1AAA" as const, ...place })).map(boxOf),
  );

const eyes = [
  isometricEye,
  ...[-170, -120, -30, 0, 15, 90, 140].flatMap((turn) =>
    [10, 35, 70].map((tilt) => pictureEye({ turnMdeg: turn * 1000 + 137, tiltMdeg: tilt * 1000 })),
  ),
];

describe("hidden lines of a picture", () => {
  it("are right from every eye: what is drawn last at a place is what is nearest there", () => {
    const tally = { places: 0, wrong: [] as string[] };
    fc.assert(
      fc.property(randomScheme, fc.constantFrom(...eyes), (scheme, eye) => {
        const found = wrongPlaces(apart(solidsOf(scheme)), eye);
        tally.places += found.places;
        tally.wrong.push(...found.wrong);
      }),
      { numRuns: 120, seed: 11 },
    );
    expect(tally.places).toBeGreaterThan(2000);
    expect(tally.wrong).toEqual([]);
  });

  it("are told by a sweep as they are where each solid is held against each other one", () => {
    let drawn = 0;
    fc.assert(
      fc.property(manyBoxes, fc.constantFrom(...eyes), (solids, eye) => {
        const order = drawingOrder(solids, eye);
        expect(order).toEqual(plainOrder(solids, eye));
        drawn += order.length;
      }),
      { numRuns: 100, seed: 12 },
    );
    expect(drawn).toBeGreaterThan(2000);
  });

  it("would be found wrong if nearer things were drawn first", () => {
    const unit = (id: string, yMm: number) => ({
      ...{ id, tag: id, type: "1AAA" as const, xUm: 0, yUm: yMm * 1000, zUm: 0, turnMdeg: 0 },
    });
    const solids = solidsOf({ ...emptyScheme, containers: [unit("south", 0), unit("north", 2500)] });
    expect(drawingOrder(solids, isometricEye).map(({ id }) => id)).toEqual(["north", "south"]);
    expect(drawingOrder(solids, pictureEye({ turnMdeg: 60_000, tiltMdeg: 30_000 })).map(({ id }) => id)).toEqual([
      "south",
      "north",
    ]);
  });

  it("draws lengths along the three axes alike from the isometric's eye (ISO 5456-3, 5.1; from memory)", () => {
    const along = (at: { xMm: number; yMm: number; zMm: number }) => {
      const { rightMm, downMm } = onPicture(isometricEye, at);
      return Math.hypot(rightMm, downMm);
    };
    expect(along({ xMm: 1000, yMm: 0, zMm: 0 })).toBeCloseTo(1000, 9);
    expect(along({ xMm: 0, yMm: 1000, zMm: 0 })).toBeCloseTo(1000, 9);
    expect(along({ xMm: 0, yMm: 0, zMm: 1000 })).toBeCloseTo(1000, 9);
  });
});
