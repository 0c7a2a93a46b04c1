import {
  containerTypes,
  mmToUm,
  type Container,
  type Opening,
  type Pad,
  type Post,
  type Scheme,
} from "@cornerway/schema";
import fc from "fast-check";
import { schemeOf } from "./scheme-of.ts";

/** Heights of the types, mm (ISO 668), so that storeys can be stacked to touch. */
const heightMm = (type: Container["type"]): number =>
  ["1EEE", "1AAA", "1BBB", "1CCC"].includes(type) ? 2896 : ["1A", "1C", "1D"].includes(type) ? 2438 : 2591;

const quarter = fc.constantFrom(0, 90, 180, 270);
const sharedTurn = fc.oneof(
  { weight: 5, arbitrary: quarter },
  { weight: 1, arbitrary: fc.integer({ min: 0, max: 359 }) },
);

type Spot = {
  type: Container["type"];
  column: number;
  row: number;
  storey: number;
  dx: number;
  dy: number;
  turn: number;
};
const spot: fc.Arbitrary<Spot> = fc.record({
  type: fc.oneof(
    { weight: 4, arbitrary: fc.constantFrom("1AAA" as const, "1CCC" as const) },
    { weight: 1, arbitrary: fc.constantFrom(...containerTypes) },
  ),
  column: fc.integer({ min: 0, max: 2 }),
  row: fc.integer({ min: 0, max: 3 }),
  storey: fc.integer({ min: 0, max: 2 }),
  dx: fc.oneof(
    { weight: 2, arbitrary: fc.constant(0) },
    { weight: 1, arbitrary: fc.integer({ min: -7000, max: 7000 }) },
  ),
  dy: fc.oneof(
    { weight: 3, arbitrary: fc.constant(0) },
    { weight: 1, arbitrary: fc.integer({ min: -1500, max: 1500 }) },
  ),
  turn: sharedTurn,
});

const cut = fc.record({
  unit: fc.nat(),
  face: fc.constantFrom(
    "left" as const,
    "right" as const,
    "front" as const,
    "door" as const,
    "roof" as const,
    "floor" as const,
  ),
  use: fc.constantFrom("door" as const, "window" as const, "open-wall" as const, "hatch" as const),
  at: fc.integer({ min: 0, max: 9000 }),
  sill: fc.integer({ min: 0, max: 1500 }),
  width: fc.integer({ min: 300, max: 6000 }),
  height: fc.integer({ min: 300, max: 2600 }),
});

const column = fc.record({
  x: fc.integer({ min: -8000, max: 34000 }),
  y: fc.integer({ min: -8000, max: 14000 }),
  foot: fc.constantFrom(0, 0, 100, 174, 2896),
  head: fc.constantFrom(2830, 2896, 5792, 3000),
});

/**
 * Schemes as people draw them, good and bad: units in rows and storeys, some shifted or turned, openings anywhere, posts
 * here and there, pads under every second corner on the ground. Sorted and valid by construction.
 */
export const randomScheme: fc.Arbitrary<Scheme> = fc
  .record({
    spots: fc.array(spot, { minLength: 1, maxLength: 10 }),
    cuts: fc.array(cut, { maxLength: 6 }),
    columns: fc.array(column, { maxLength: 3 }),
    padEvery: fc.constantFrom(1, 1, 2),
    pressure: fc.integer({ min: 0, max: 5000 }),
  })
  .map(({ spots, cuts, columns, padEvery, pressure }) => {
    const units = spots.map((one, at) => ({
      id: `u${at}`,
      type: one.type,
      x: one.column * 12192 + one.dx,
      y: one.row * 2438 + one.dy,
      z: one.storey * heightMm("1AAA"),
      turn: one.turn,
    }));
    const ground = units.filter(({ z }) => z === 0);
    return schemeOf({
      units,
      cuts: cuts.map(({ unit, ...shape }, at) => ({
        ...shape,
        id: `d${at}`,
        in: units[unit % units.length]?.id ?? "u0",
      })),
      posts: columns.map((post, at) => ({ ...post, head: Math.max(post.head, post.foot + 500), id: `p${at}` })),
      pads: ground
        .flatMap((unit) => [-1, 1].flatMap((sx) => [-1, 1].map((sy) => ({ unit, sx, sy }))))
        .filter((_, at) => at % padEvery === 0)
        .map(({ unit, sx, sy }, at) => ({
          id: `b${at}`,
          x: unit.x + sx * 2900,
          y: unit.y + sy * 1100,
          length: 6200,
          width: 900,
        })),
      loads: units.map(({ id }) => ({ in: id, pa: pressure })),
    });
  });

/** A stack of whole units corner on corner on pads, any type, doors either way: it works as built. */
export const cornerStack: fc.Arbitrary<Scheme> = fc
  .record({
    type: fc.constantFrom(...containerTypes),
    flips: fc.array(fc.boolean(), { minLength: 1, maxLength: 8 }),
    x: fc.integer({ min: -1_000_000, max: 1_000_000 }),
    y: fc.integer({ min: -1_000_000, max: 1_000_000 }),
    turn: quarter,
    pressure: fc.integer({ min: 0, max: 5000 }),
  })
  .map(({ type, flips, x, y, turn, pressure }) => {
    const units = flips.map((flip, storey) => ({
      id: `u${storey}`,
      type,
      x,
      y,
      z: storey * heightMm(type),
      turn: (turn + (flip ? 180 : 0)) % 360,
    }));
    const slab = [{ id: "slab", x, y, length: 14000, width: 14000 }];
    return schemeOf({ units, pads: slab, loads: units.map(({ id }) => ({ in: id, pa: pressure })) });
  });

/** The scheme moved by whole millimetres. */
export const moved = (scheme: Scheme, xMm: number, yMm: number): Scheme => {
  const shift = <T extends { xUm: number; yUm: number }>(element: T): T => ({
    ...element,
    xUm: element.xUm + mmToUm(xMm),
    yUm: element.yUm + mmToUm(yMm),
  });
  return {
    ...scheme,
    containers: scheme.containers.map(shift),
    posts: scheme.posts.map(shift),
    pads: scheme.pads.map(shift),
  };
};

/** The scheme turned by a quarter about the origin, north with it. */
export const quarterTurned = (scheme: Scheme): Scheme => {
  const turn = <T extends { xUm: number; yUm: number; turnMdeg: number }>(element: T): T => ({
    ...element,
    xUm: 0 - element.yUm,
    yUm: element.xUm,
    turnMdeg: (element.turnMdeg + 90_000) % 360_000,
  });
  const site = { ...scheme.site, northMdeg: (scheme.site.northMdeg + 90_000) % 360_000 };
  return {
    ...scheme,
    site,
    containers: scheme.containers.map(turn),
    posts: scheme.posts.map(turn),
    pads: scheme.pads.map(turn),
  };
};

/** The scheme seen in a mirror along the x axis: left becomes right, and across an end or roof all is measured back. */
export const mirrored = (scheme: Scheme): Scheme => {
  const flip = <T extends { yUm: number; turnMdeg: number }>(element: T): T => ({
    ...element,
    yUm: 0 - element.yUm,
    turnMdeg: (360_000 - element.turnMdeg) % 360_000,
  });
  return {
    ...scheme,
    containers: scheme.containers.map((one: Container) => flip(one)),
    posts: scheme.posts.map((one: Post) => flip(one)),
    pads: scheme.pads.map((one: Pad) => flip(one)),
    openings: scheme.openings.map(mirroredOpening),
  };
};

const widthUm = 2_438_000;

function mirroredOpening(opening: Opening): Opening {
  switch (opening.face) {
    case "left":
      return { ...opening, face: "right" };
    case "right":
      return { ...opening, face: "left" };
    case "front":
    case "door":
      return { ...opening, offsetUm: widthUm - opening.offsetUm - opening.widthUm };
    case "roof":
    case "floor":
      return { ...opening, sillUm: widthUm - opening.sillUm - opening.heightUm };
  }
}
