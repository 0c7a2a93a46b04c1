import type { Scheme } from "@cornerway/schema";
import { padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";

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

/** Small schemes, each with a mark that something settles. */
export const smallSchemes: readonly { readonly what: string; readonly markId: string; readonly scheme: Scheme }[] = [
  {
    what: "a unit pushed 3.6 m over the one below tips",
    markId: "tips-over:t",
    scheme: schemeOf({ units: [lower, { id: "t", type: "1CCC", x: 3600, y: 0, z: high }], pads }),
  },
  {
    what: "a unit pushed 1.5 m over the one below overhangs",
    markId: "overhang:t:door",
    scheme: schemeOf({ units: [lower, { id: "t", type: "1CCC", x: 1500, y: 0, z: high }], pads }),
  },
  {
    what: "the same comes down on rails",
    markId: "borne-on-rail:t",
    scheme: schemeOf({ units: [lower, { id: "t", type: "1CCC", x: 1500, y: 0, z: high }], pads }),
  },
  {
    what: "the same rocks on two heights",
    markId: "rocks:t",
    scheme: schemeOf({ units: [lower, { id: "t", type: "1CCC", x: 1500, y: 0, z: high }], pads }),
  },
  {
    what: "a unit 20 mm off needs made connections",
    markId: "made-connection:t+g",
    scheme: schemeOf({ units: [lower, { id: "t", type: "1CCC", x: 20, y: 0, z: high }], pads }),
  },
  {
    what: "a door cut through the top rail",
    markId: "member-cut:d+g:top-side-rail",
    scheme: schemeOf({ units: [lower], pads, cuts: [{ ...door, at: 1500, width: 1000, height: 2700 }] }),
  },
  {
    what: "a door of 3 m next to the end",
    markId: "opening-in-sheet:d+g",
    scheme: schemeOf({ units: [lower], pads, cuts: [{ ...door, at: 300, width: 3000 }] }),
  },
  {
    what: "a whole side taken out",
    markId: "wall-out:o+g",
    scheme: schemeOf({
      units: [lower],
      pads,
      cuts: [{ id: "o", in: "g", face: "left", use: "open-wall", at: 300, sill: 180, width: 5400, height: 2500 }],
    }),
  },
  {
    what: "a unit turned across two stands over a door",
    markId: "load-over-opening:d+g+t",
    scheme: schemeOf({
      units: [lower, beside, { id: "t", type: "1CCC", x: 0, y: 1244, z: high, turn: 90 }],
      pads: ofTwo,
      cuts: [{ ...door, at: 3300, width: 1600 }],
    }),
  },
  {
    what: "a lookout tips over a wall with a door",
    markId: "tips-over:t",
    scheme: lookout,
  },
  {
    what: "the door lies under the lookout's rail",
    markId: "load-over-opening:d+g+t",
    scheme: lookout,
  },
  {
    what: "pads of 400 mm under two floors",
    markId: "overstressed:g",
    scheme: schemeOf({
      units: [lower, { id: "t", type: "1CCC", x: 0, y: 0, z: high }],
      pads: padsUnder(lower).map((pad) => ({ ...pad, length: 400, width: 400 })),
      loads: [
        { in: "g", pa: 2400 },
        { in: "t", pa: 2400 },
      ],
    }),
  },
];
