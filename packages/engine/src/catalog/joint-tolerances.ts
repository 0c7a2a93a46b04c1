import type { CatalogValue } from "./catalog-value.ts";

/** When a fitting bears on another as it was tested to, and when a stock lock can join the two. */
export const jointTolerances = {
  /** Off by no more than this the pair is what the stacking test proves. */
  fullBearingAlong: {
    value: 38,
    unit: "mm",
    source: "ISO 1496-1 test 1, stacking: offset of the load applied, lengthwise",
    certainty: "memory",
  },
  fullBearingAcross: {
    value: 25.4,
    unit: "mm",
    source: "ISO 1496-1 test 1, stacking: offset of the load applied, crosswise",
    certainty: "memory",
  },
  /** A lock must at the least take up what two units made to the limits of size may differ by. */
  lockAlong: {
    value: 10,
    unit: "mm",
    source: "ISO 668 Table 2, length tolerance of 40 ft types, taken as the least play of a stock lock",
    certainty: "memory",
  },
  lockAcross: {
    value: 5,
    unit: "mm",
    source: "ISO 668 Table 2, width tolerance, taken as the least play of a stock lock",
    certainty: "memory",
  },
  /** Apertures 124.5 × 63.5 with the long side along the unit: 0° or 180° only. */
  lockTurn: {
    value: 1,
    unit: "degree",
    source: "no published source; a lock's head in a 63.5 mm wide aperture leaves little more",
    certainty: "common practice",
  },
  /** A post this little off the middle of what it holds, or of its pad, stands as it is set up on site. */
  postOffCentre: {
    value: 25,
    unit: "mm",
    source: "no published source; what setting out and erection leave",
    certainty: "common practice",
  },
  /** A tie reaches no further than this from its middle to the face of either unit: units side by side, 300 mm apart. */
  tieReach: {
    value: 150,
    unit: "mm",
    source: "no published source; half of the widest gap that still counts as side by side",
    certainty: "common practice",
  },
  /** A pad longer than this is a strip or a slab along that side: it has no middle to stand on. */
  longestSinglePad: {
    value: 2000,
    unit: "mm",
    source: "no published source",
    certainty: "common practice",
  },
  /** Two faces this close in height touch. */
  contactGap: {
    value: 2,
    unit: "mm",
    source: "no published source; less than shims and made ground take up",
    certainty: "common practice",
  },
} as const satisfies Record<string, CatalogValue>;
