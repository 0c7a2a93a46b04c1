import type { Remedy } from "@cornerway/schema";

/** An option as the engine gives it: four made connections under T1; figures made up for the page alone. */
export const lockedAtFour: Remedy = {
  id: "four",
  change: { kind: "made connections", unitId: "t1", places: 4, as: "made connection" },
  operations: [
    {
      kind: "lock.set",
      lock: { id: "l1", tag: "L1", containerId: "t1", fitting: "front-left", kind: "made connection" },
    },
  ],
  verdict: "works with steel",
  under: "gravity loads only",
  governing: [
    {
      ...{ partId: "t1 bottom side rail left", part: "bottom side rail", place: "left", check: "bending" },
      ...{
        utilisation: 0.42,
        run: "1.4D",
        envelope: { least: 0.4, leastIn: "locks tied", most: 0.42, mostIn: "pads soft" },
      },
    },
  ],
  quantities: {
    steel: [{ section: "plate", lengthM: null, massKg: 11.3 }],
    ...{
      cutM: 0,
      weldM: 4,
      pads: 0,
      padConcreteM3: 0,
      connections: 4,
      craneLifts: 0,
      sights: [],
      lostWidthMm: 0,
      lostHeightMm: 0,
    },
  },
  premium: { currency: "USD", money: 760.97, forShow: true },
  stillOpen: ["strength-open:t1"],
  also: [],
  less: {
    change: { kind: "made connections", unitId: "t1", places: 2, as: "lock" },
    also: [],
    why: { kind: "does not settle it" },
  },
};
