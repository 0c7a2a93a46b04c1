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
import { jointsPut, mirroredInUnits } from "./random-joints.ts";
import { padsUnder, schemeOf } from "./scheme-of.ts";

/** Heights of the types, mm (ISO 668), so that storeys can be stacked to touch. */
const heightMm = (type: Container["type"]): number =>
  ["1EEE", "1AAA", "1BBB", "1CCC"].includes(type) ? 2896 : ["1A", "1C", "1D"].includes(type) ? 2438 : 2591;

const quarter = fc.constantFrom(0, 90, 180, 270);
const sharedTurn = fc.oneof(
  { weight: 5, arbitrary: quarter },
  { weight: 1, arbitrary: fc.integer({ min: 0, max: 359 }) },
);

type Rise = { parent: number; same: boolean; type: Container["type"]; shift: number; aside: number; turn: number };

/** A unit set on one already there: on its corners, pushed along it, moved aside, or turned across it. */
const rise: fc.Arbitrary<Rise> = fc.record({
  parent: fc.nat(),
  same: fc.boolean(),
  type: fc.constantFrom(...containerTypes),
  shift: fc.oneof(
    { weight: 2, arbitrary: fc.constant(0) },
    { weight: 2, arbitrary: fc.integer({ min: -7000, max: 7000 }) },
  ),
  aside: fc.oneof(
    { weight: 4, arbitrary: fc.constant(0) },
    { weight: 1, arbitrary: fc.integer({ min: -1500, max: 1500 }) },
  ),
  turn: sharedTurn,
});

const cut = fc.record({
  unit: fc.nat(),
  face: fc.constantFrom("left", "left", "right", "right", "front", "door", "roof", "floor"),
  use: fc.constantFrom("door", "window", "open-wall", "hatch"),
  at: fc.integer({ min: 100, max: 5000 }),
  sill: fc.constantFrom(180, 180, 900, 20),
  width: fc.integer({ min: 300, max: 2200 }),
  height: fc.integer({ min: 300, max: 2000 }),
});

/** A post under a corner of some unit, or beside it, with or without a pad. */
const column = fc.record({
  unit: fc.nat(),
  corner: fc.nat({ max: 3 }),
  off: fc.constantFrom(0, 0, 0, 400),
  foot: fc.constantFrom(0, 0, 0, 100),
  padded: fc.boolean(),
});

/**
 * Schemes as people draw them, good and bad: units in rows on pads, others set on them corner on corner, shifted, turned;
 * openings anywhere, posts under free corners. Sorted and valid by construction.
 */
export const randomScheme: fc.Arbitrary<Scheme> = fc
  .record({
    rows: fc.array(fc.constantFrom<Container["type"]>("1AAA", "1AAA", "1CCC", "1AA"), { minLength: 1, maxLength: 3 }),
    gap: fc.constantFrom(0, 50),
    rises: fc.array(rise, { maxLength: 5 }),
    cuts: fc.array(cut, { maxLength: 4 }),
    columns: fc.array(column, { maxLength: 3 }),
    padLess: fc.nat({ max: 8 }),
    pressure: fc.integer({ min: 0, max: 5000 }),
  })
  .map(({ rows, gap, rises, cuts, columns, padLess, pressure }) => {
    const ground = rows.map((type, at) => ({ id: `g${at}`, type, x: 0, y: at * (2438 + gap), z: 0, turn: 0 }));
    const units = [...ground];
    rises.forEach((one, at) => {
      const parent = units[one.parent % units.length];
      if (parent !== undefined) units.push(setOn(parent, one, `u${at}`));
    });
    const posts = columns.flatMap((one, at) => {
      const unit = units[one.unit % units.length];
      const corner =
        unit === undefined ? undefined : padsUnder({ ...unit, turn: unit.turn % 180 === 0 ? 0 : 90 })[one.corner];
      if (unit === undefined || corner === undefined || unit.z === 0) return [];
      return [{ id: `p${at}`, x: corner.x + one.off, y: corner.y, foot: one.foot, head: unit.z, padded: one.padded }];
    });
    return schemeOf({
      units,
      cuts: cuts.map(({ unit, ...shape }, at) => ({
        ...shape,
        id: `d${at}`,
        in: units[unit % units.length]?.id ?? "g0",
      })),
      posts: posts.map(({ id, x, y, foot, head }) => ({ id, x, y, foot, head })),
      pads: [
        ...ground.flatMap((unit) => padsUnder(unit)).filter((_, at) => at !== padLess),
        ...posts.filter(({ padded }) => padded).map(({ id, x, y }) => ({ id: `${id}-pad`, x, y })),
      ],
      loads: units.map(({ id }) => ({ in: id, pa: pressure })),
    });
  });

function setOn(
  parent: { type: Container["type"]; x: number; y: number; z: number; turn: number },
  one: Rise,
  id: string,
) {
  const along = parent.turn % 180 === 0;
  return {
    id,
    type: one.same ? parent.type : one.type,
    x: parent.x + (along ? one.shift : one.aside),
    y: parent.y + (along ? one.aside : one.shift),
    z: parent.z + heightMm(parent.type),
    turn: one.same ? parent.turn : one.turn,
  };
}

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
    ...jointsPut(scheme, shift),
  };
};

/** The scheme turned by a quarter about the origin, north with it. */
export const quarterTurned = (scheme: Scheme): Scheme => {
  const swing = <T extends { xUm: number; yUm: number }>(element: T): T => ({
    ...element,
    xUm: 0 - element.yUm,
    yUm: element.xUm,
  });
  const turn = <T extends { xUm: number; yUm: number; turnMdeg: number }>(element: T): T => ({
    ...swing(element),
    turnMdeg: (element.turnMdeg + 90_000) % 360_000,
  });
  const site = { ...scheme.site, northMdeg: (scheme.site.northMdeg + 90_000) % 360_000 };
  return {
    ...scheme,
    site,
    containers: scheme.containers.map(turn),
    posts: scheme.posts.map(turn),
    pads: scheme.pads.map(turn),
    ...jointsPut(scheme, swing),
  };
};

/** The scheme seen in a mirror along the x axis: left becomes right, and across an end or roof all is measured back. */
export const mirrored = (scheme: Scheme): Scheme => {
  const across = <T extends { yUm: number }>(element: T): T => ({ ...element, yUm: 0 - element.yUm });
  const flip = <T extends { yUm: number; turnMdeg: number }>(element: T): T => ({
    ...across(element),
    turnMdeg: (360_000 - element.turnMdeg) % 360_000,
  });
  return {
    ...scheme,
    containers: scheme.containers.map((one: Container) => flip(one)),
    posts: scheme.posts.map((one: Post) => flip(one)),
    pads: scheme.pads.map((one: Pad) => flip(one)),
    openings: scheme.openings.map(mirroredOpening),
    ...jointsPut(scheme, across),
    ...mirroredInUnits(scheme),
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
