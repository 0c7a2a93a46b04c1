import { describe, expect, it } from "vitest";
import { strength } from "../../src/strength.ts";
import { padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";

// ISO 668, from memory: hole centres of a 20 ft unit 5853 mm lengthwise and 2259 mm crosswise; 2896 mm high.
const spacing = 5853;
const half = 2259 / 2;
const lower = { id: "g", type: "1CCC" as const, x: 0, y: 0 };

const scheme = schemeOf({
  units: [lower, { id: "t", type: "1CCC", x: spacing, y: 0, z: 2896 }],
  posts: [
    { id: "p1", x: 1.5 * spacing, y: -half, foot: 0, head: 2896 },
    { id: "p2", x: 1.5 * spacing, y: half, foot: 0, head: 2896 },
  ],
  pads: [
    ...padsUnder(lower),
    { id: "b1", x: 1.5 * spacing, y: -half, length: 900, width: 900 },
    { id: "b2", x: 1.5 * spacing, y: half, length: 900, width: 900 },
  ],
});

describe("strength of posts that stand by themselves", () => {
  it("holds the head of each to the unit on it: two posts under one end stand under every set of assumptions", () => {
    const answer = strength(scheme);
    if (!answer.accepted) throw new Error("gravity alone has no hazards to refuse");
    expect(answer.refusedRuns).toEqual([]);
    expect(answer.envelope.every(({ runs, withoutEquilibrium }) => runs > 0 && withoutEquilibrium === 0)).toBe(true);
  });
});
