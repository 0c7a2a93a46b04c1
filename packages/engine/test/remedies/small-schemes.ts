import { defaultBasis, type RemedyChange, type Scheme, type Seat } from "@cornerway/schema";
import { padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";
import { sampleHazards } from "../codes-loads/sample-hazards.ts";

// 20 ft high cubes on pads of their own: 2896 mm high, 2438 wide, holes 5853 apart (ISO 668, from memory).
const high = 2896;
const lower = { id: "g", type: "1CCC" as const, x: 0, y: 0 };
const beside = { id: "h", type: "1CCC" as const, x: 0, y: 2488 };
const pads = padsUnder(lower).map((pad) => ({ ...pad, length: 1400, width: 1400 }));
/** Two units side by side share the pads between them. */
const shared = [lower, beside].flatMap((unit) =>
  padsUnder(unit).map((pad) => ({
    ...pad,
    length: 1000,
    width: 1000,
    y: pad.y === 1129.5 || pad.y === 1358.5 ? 1244 : pad.y,
  })),
);
const ofTwo = shared.filter(({ x, y }, at) => shared.findIndex((pad) => pad.x === x && pad.y === y) === at);
const door = { id: "d", in: "g", face: "right" as const, use: "door" as const, sill: 180, height: 2200 };

/**
 * A lookout: `t` turned across `g`, its north end on the fittings of `h`, which is turned as it is; it reaches 3.4 m south of `g`
 * and tips over its wall, in which a door lies right under one of its rails.
 */
const turnedNorth = { id: "h", type: "1CCC" as const, x: 0, y: 4298, turn: 270 };
const lookout = schemeOf({
  units: [lower, turnedNorth, { id: "t", type: "1CCC", x: 0, y: 4298 - 5853, z: high, turn: 270 }],
  pads: [...pads, ...padsUnder(turnedNorth).map((pad) => ({ ...pad, length: 1400, width: 1400 }))],
  cuts: [{ ...door, at: 3700, width: 1000 }],
});

/** A unit 20 mm above its place and 1.5 m along the one below, on seats: those on the rail are 16 mm too thin. */
const thinlyPacked: Scheme = {
  ...schemeOf({ units: [lower, { id: "t", type: "1CCC", x: 1500, y: 0, z: high + 20 }], pads }),
  seats: [-1, 1].flatMap((side, n) => [
    seat(`s${n}`, { x: 1500 - 2926.5, y: side * 1189, length: 200, width: 60, packing: 10 }),
    seat(`e${n}`, { x: 2926.5, y: side * 1189, length: 140, width: 40, packing: 32.5 }),
  ]),
};

type SeatMm = { readonly x: number; readonly y: number; readonly length: number; readonly width: number };

function seat(id: string, { x, y, length, width, packing }: SeatMm & { readonly packing: number }): Seat {
  return {
    ...{ id, tag: id.toUpperCase(), upperId: "t", lowerId: "g", heldDown: false },
    ...{ xUm: x * 1000, yUm: y * 1000, lengthUm: length * 1000, widthUm: width * 1000, packingUm: packing * 1000 },
  };
}

// a 20 ft unit lies in the middle of a 40 ft one; beside them a 40 ft one lies on a 20 ft one
const long = { id: "a", type: "1AAA" as const, x: 0, y: 4000 };
const [short, away] = [
  { id: "u", type: "1CCC" as const, x: 0, y: 4000, z: high },
  { ...beside, y: 4000 },
];

/** Small schemes, each with a mark that something settles, and kinds of ways that are found and proved there. */
export const smallSchemes: readonly {
  readonly what: string;
  readonly markId: string;
  readonly scheme: Scheme;
  readonly kinds: readonly RemedyChange["kind"][];
}[] = [
  {
    what: "a unit pushed 3.6 m over the one below tips",
    markId: "tips-over:t",
    kinds: ["shorter overhang", "made connections", "posts"],
    scheme: schemeOf({ units: [lower, { id: "t", type: "1CCC", x: 3600, y: 0, z: high }], pads }),
  },
  {
    what: "a unit pushed 1.5 m over the one below overhangs",
    markId: "overhang:t:door",
    kinds: ["seats", "shorter overhang", "made connections", "posts"],
    scheme: schemeOf({ units: [lower, { id: "t", type: "1CCC", x: 1500, y: 0, z: high }], pads }),
  },
  {
    what: "the same comes down on rails",
    markId: "borne-on-rail:t",
    kinds: ["land on fittings", "seats", "posts"],
    scheme: schemeOf({ units: [lower, { id: "t", type: "1CCC", x: 1500, y: 0, z: high }], pads }),
  },
  {
    what: "the same rocks on two heights",
    markId: "rocks:t",
    kinds: ["land on fittings", "seats"],
    scheme: schemeOf({ units: [lower, { id: "t", type: "1CCC", x: 1500, y: 0, z: high }], pads }),
  },
  {
    what: "a unit 20 mm off needs made connections",
    markId: "made-connection:t+g",
    kinds: ["land on fittings", "made connections"],
    scheme: schemeOf({ units: [lower, { id: "t", type: "1CCC", x: 20, y: 0, z: high }], pads }),
  },
  {
    what: "a door cut through the top rail",
    markId: "member-cut:d+g:top-side-rail",
    kinds: ["lower opening"],
    scheme: schemeOf({ units: [lower], pads, cuts: [{ ...door, at: 1500, width: 1000, height: 2700 }] }),
  },
  {
    what: "a door of 3 m next to the end",
    markId: "opening-in-sheet:d+g",
    kinds: ["narrow opening", "cut in place", "leave a pier", "posts"],
    scheme: schemeOf({ units: [lower], pads, cuts: [{ ...door, at: 300, width: 3000 }] }),
  },
  {
    what: "a whole side taken out",
    markId: "wall-out:o+g",
    kinds: ["posts"],
    scheme: schemeOf({
      units: [lower],
      pads,
      cuts: [{ id: "o", in: "g", face: "left", use: "open-wall", at: 300, sill: 180, width: 5400, height: 2500 }],
    }),
  },
  {
    what: "a unit turned across two stands over a door",
    markId: "load-over-opening:d+g+t",
    kinds: ["split opening", "posts", "header"],
    scheme: schemeOf({
      units: [lower, beside, { id: "t", type: "1CCC", x: 0, y: 1244, z: high, turn: 90 }],
      pads: ofTwo,
      cuts: [{ ...door, at: 3100, width: 1900 }],
    }),
  },
  {
    what: "a lookout tips over a wall with a door",
    markId: "tips-over:t",
    // held down on the rails alone, the twist of its own rail beside a seat is 1.13 of its bound
    kinds: ["posts"],
    scheme: lookout,
  },
  {
    what: "the door lies under the lookout's rail",
    markId: "load-over-opening:d+g+t",
    kinds: ["move opening", "posts", "header"],
    scheme: lookout,
  },
  {
    what: "pads of 400 mm under two floors",
    markId: "overstressed:g",
    kinds: ["larger pads"],
    scheme: schemeOf({
      units: [lower, { id: "t", type: "1CCC", x: 0, y: 0, z: high }],
      pads: padsUnder(lower).map((pad) => ({ ...pad, length: 400, width: 400 })),
      loads: [
        { in: "g", pa: 2400 },
        { in: "t", pa: 2400 },
      ],
    }),
  },
  {
    what: "a window in a side",
    markId: "opening-in-sheet:w+g",
    kinds: ["frame opening", "leave unframed", "header", "lower opening", "move opening"],
    scheme: schemeOf({
      units: [lower],
      pads,
      cuts: [{ id: "w", in: "g", face: "right", use: "window", at: 2120, sill: 900, width: 1200, height: 1200 }],
    }),
  },
  {
    what: "seats too thin to be reached",
    markId: "seat-packing:s0",
    kinds: ["packing"],
    scheme: thinlyPacked,
  },
  {
    what: "a short unit lies on a long one, and a long one on a short one",
    markId: "borne-on-rail:u",
    kinds: ["swap units", "seats"],
    scheme: schemeOf({
      units: [lower, { id: "t", type: "1AAA", x: 3067, y: 0, z: high }, long, short],
      pads: [lower, long].flatMap((unit) => padsUnder(unit).map((pad) => ({ ...pad, length: 1400, width: 1400 }))),
    }),
  },
  {
    what: "a unit turned across two whose gap does not suit it",
    markId: "borne-on-rail:t",
    kinds: ["land on fittings"],
    scheme: schemeOf({
      units: [lower, away, { id: "t", type: "1CCC", x: 1797, y: 2000, z: high, turn: 90 }],
      pads: [lower, away].flatMap((unit) => padsUnder(unit).map((pad) => ({ ...pad, length: 1400, width: 1400 }))),
    }),
  },
  {
    what: "a 30 ft unit reaches past the 20 ft one below",
    markId: "near-tipping:t",
    kinds: ["other unit", "shorter overhang", "made connections"],
    scheme: schemeOf({ units: [lower, { id: "t", type: "1BBB", x: 2800, y: 0, z: high }], pads }),
  },
  {
    what: "two units side by side in the wind",
    markId: "slides:g",
    kinds: ["made connections"],
    scheme: {
      ...schemeOf({
        units: [lower, beside],
        pads: ofTwo.map((pad) => ({ ...pad, length: 1200, width: 1200 })),
        loads: [{ in: "h", pa: 4000, case: "finish" }],
      }),
      basis: { ...defaultBasis, hazards: sampleHazards({ wind: { mph: 85 }, seismic: { ss: 0.1, s1: 0.04 } }) },
    },
  },
  {
    what: "a passage is cut in the blind end and the doors work",
    markId: "no-lateral-wall:g:crosswise",
    kinds: ["weld doors", "close openings"],
    scheme: schemeOf({
      units: [lower],
      pads,
      cuts: [{ id: "e", in: "g", face: "front", use: "passage", at: 500, sill: 180, width: 1400, height: 2200 }],
    }),
  },
  {
    what: "a unit lies off its corners over one whose rail is bent below a wide door",
    markId: "strength-open:g",
    kinds: ["land on fittings"],
    scheme: schemeOf({
      units: [lower, { id: "t", type: "1CCC", x: 1500, y: 0, z: high }],
      pads: padsUnder(lower).map((pad) => ({ ...pad, length: 1600, width: 1600 })),
      cuts: [{ ...door, at: 1800, width: 2400, cut: "after shoring" }],
      loads: [
        { in: "g", pa: 4800 },
        { in: "t", pa: 2400 },
      ],
    }),
  },
];
