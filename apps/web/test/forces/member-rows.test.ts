import type { MemberForces } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { memberRows } from "../../src/forces/member-rows.ts";
import { sumsByPad } from "../../src/forces/sums-by-pad.ts";
import { judgedProof } from "../support/judged-unit.ts";
import { schemeOf, unitAt } from "../support/schemes.ts";

const scheme = schemeOf([unitAt("g1", "G1", 0, 0, 0)]);
const at = { uMm: 4200, yMm: 0, zMm: 1900 };
const one = (value: number) => ({ value, at, run: "r" });
const member = (part: string, place: string, pressedKn: number, pulledKn: number): MemberForces => ({
  ...{ ownerId: "g1", part, place },
  ...{ pressed: one(pressedKn), pulled: one(pulledKn), shear: one(12.3), moment: one(4.56) },
});

describe("forces of what is chosen", () => {
  it("say what presses or pulls more, shear, moment and where", () => {
    const [post, rail] = memberRows(
      [member("front corner post", "left", 112.44, 0), member("top side rail", "right", 3, -14.2)],
      null,
      scheme,
      { elementId: "g1", units: "SI" },
    );
    expect(post).toMatchObject({ axial: "112.4 kN pressed", shear: "12.3 kN", moment: "4.6 kN m", where: "1.90 m up" });
    expect(rail).toMatchObject({ axial: "14.2 kN pulled", where: "4.20 m from the front" });
  });

  it("stand beside the check that governs the member, the fullest first", () => {
    const { report } = judgedProof;
    const [worst] = report.results;
    if (worst === undefined) throw new Error("the sample has results");
    const own = { ...member(worst.part, worst.place, 1, 0), ownerId: worst.ownerId };
    const rows = memberRows([{ ...own, place: "of no check" }, own], report, scheme, {
      elementId: worst.ownerId,
      units: "SI",
    });
    expect(rows.map(({ check }) => check?.id ?? null)).toEqual([worst.id, null]);
  });

  it("are those of the unit where an opening is chosen", () => {
    const cut = { ...scheme, openings: [{ id: "d1", containerId: "g1" }] } as unknown as typeof scheme;
    expect(memberRows([member("jamb", "left", 1, 0)], null, cut, { elementId: "d1", units: "US" })).toHaveLength(1);
  });
});

describe("what the ground gives", () => {
  it("is summed over all that stands on one pad, sideways as one force", () => {
    const reaction = (elementId: string, upKn: number, eastKn: number, northKn: number) => ({
      ...{ elementId, upKn, eastKn, northKn, ownerId: "g1", place: "", at: { xMm: 0, yMm: 0, zMm: 0 } },
    });
    expect(sumsByPad([reaction("p1", 10, 3, 0), reaction("p2", 5, 0, 0), reaction("p1", 20, 0, 4)])).toEqual([
      { elementId: "p1", upKn: 30, levelKn: 5 },
      { elementId: "p2", upKn: 5, levelKn: 0 },
    ]);
  });
});
