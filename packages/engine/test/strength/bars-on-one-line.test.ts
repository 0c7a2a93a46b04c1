import { describe, expect, it } from "vitest";
import { containerMembers } from "../../src/catalog/sections/container-members.ts";
import { frameTube } from "../../src/catalog/sections/frame-tubes.ts";
import { lengthBeside } from "../../src/strength/bars-on-one-line.ts";

const rail = containerMembers["top side rail"];

describe("a bar welded along another on the same line", () => {
  it("bows as by itself beside its like", () => {
    expect(lengthBeside(rail, rail, 3000)).toBeCloseTo(3000, 9);
  });

  // By hand: both bow at ΣP = π² E (I₁ + I₂)/L², of which the rail has A₁/(A₁ + A₂); alone at that length it has π² E I₁/l².
  it("has of the sum of both elastic forces the share of its area", () => {
    const l = lengthBeside(rail, frameTube, 12_000);
    const ownShare = ((rail.ixMm4 + frameTube.ixMm4) * rail.areaMm2) / (rail.areaMm2 + frameTube.areaMm2) / 12_000 ** 2;
    expect(rail.ixMm4 / l ** 2 / ownShare).toBeCloseTo(1, 12);
    expect(l).toBeLessThan(12_000);
  });

  it("and its stiffer neighbour holds it: for that one the length grows", () => {
    expect(lengthBeside(frameTube, rail, 12_000)).toBeGreaterThan(12_000);
  });
});
