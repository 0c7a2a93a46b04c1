import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { steels } from "../../src/catalog/materials.ts";
import { containerMembers } from "../../src/catalog/sections/container-members.ts";
import { frameTube } from "../../src/catalog/sections/frame-tubes.ts";
import type { CheckedMember } from "../../src/checks/checked-member.ts";
import { governing } from "../../src/checks/check.ts";
import { bowLimits } from "../../src/strength/bowed-demand.ts";
import { MemberBound } from "../../src/strength/member-bound.ts";
import { memberPart } from "../../src/strength/member-part.ts";
import type { SolvedRun } from "../../src/strength/solve-runs.ts";
import { basis, firstSet } from "./one-run.ts";

const FORCES = 9;
const beams = ["a", "b", "c"].map((id, n) => ({ id, lengthMm: 300 + 700 * n }));
const memberOf = ({
  element,
  section,
  steel,
}: Pick<CheckedMember, "element" | "section" | "steel">): CheckedMember => ({
  element,
  section,
  steel,
  lengths: { strongMm: 2500, weakMm: 300, twistMm: 300 },
  unbracedMm: 300,
  cb: 1,
});
const members = [
  memberOf({
    element: "bottom side rail",
    section: containerMembers["bottom side rail"],
    steel: steels.unproved,
  }),
  memberOf({ element: "top side rail", section: containerMembers["top side rail"], steel: steels.unproved }),
  memberOf({ element: "jamb", section: frameTube, steel: steels.tube }),
];

const force = fc.oneof(fc.constant(0), fc.integer({ min: -40_000, max: 40_000 }));
const moment = fc.oneof(fc.constant(0), fc.integer({ min: -6_000_000, max: 6_000_000 }));
const line = fc.tuple(force, force, force, moment, moment, moment, force, force, force);
const lines = fc.tuple(line, line, line).map((all) => Float64Array.from(all.flat()));

/** The part asks a solved run for nothing but the forces of its own lines. */
const nothing = { set: firstSet(), held: [] } as unknown as SolvedRun;

describe("a member on plain numbers", () => {
  it.each(members.map((member) => [member.element, member] as const))(
    "uses as much of a %s as the run's working says of its worst place, to the last bit, and as its checks with their workings",
    (_, member) => {
      fc.assert(
        fc.property(lines, (values) => {
          const forces = () => ({ values, at: (id: string) => beams.findIndex((beam) => beam.id === id) * FORCES });
          const part = memberPart({ ownerId: "u", place: "all", member, beams, forces }, basis.factored);
          const use = part.use(nothing);
          const decided = part.decide(nothing);
          expect(decided.utilisation).toBe(use);
          const worst = governing(decided.checks());
          if (worst === undefined) return expect(use).toBe(0);
          if (!worst.ok) return expect(use).toBe(Infinity);
          expect(Math.abs(worst.utilisation - use)).toBeLessThanOrEqual(1e-12 * use);
        }),
        { seed: 20261127, numRuns: 60 },
      );
    },
  );

  it.each(members.map((member) => [member.element, member] as const))(
    "tells of a %s what is above a use that is known, and else that use: lines are left out only below it",
    (_, member) => {
      fc.assert(
        fc.property(lines, fc.double({ min: 0, max: 1.2, noNaN: true }), (values, share) => {
          const forces = () => ({ values, at: (id: string) => beams.findIndex((beam) => beam.id === id) * FORCES });
          const part = memberPart({ ownerId: "u", place: "all", member, beams, forces }, basis.factored);
          const use = part.use(nothing);
          fc.pre(Number.isFinite(use));
          expect(part.use(nothing, share * use)).toBe(Math.max(use, share * use));
        }),
        { seed: 20261128, numRuns: 200 },
      );
    },
  );
});

describe("the bound of a line", () => {
  it("is never below what its worst place uses, and is passed over by what is above it", () => {
    const [member] = members;
    if (member === undefined) throw new Error("there is a sample");
    const bound = new MemberBound(basis.factored.capacities(basis.factored.memberStrengths(member)), bowLimits(member));
    let above = 0;
    fc.assert(
      fc.property(line, (own) => {
        const values = Float64Array.from(own);
        const [first] = beams;
        if (first === undefined) return;
        const forces = () => ({ values, at: () => 0 });
        const use = memberPart({ ownerId: "u", place: "all", member, beams: [first], forces }, basis.factored).use(
          nothing,
        );
        fc.pre(use > 0);
        expect(bound.mayExceed(use * (1 - 1e-12), values, 0, first.lengthMm)).toBe(true);
        if (!bound.mayExceed(2 * use, values, 0, first.lengthMm)) above++;
      }),
      { seed: 20261129, numRuns: 400 },
    );
    expect(above).toBeGreaterThan(300);
  });
});
