import { describe, expect, it } from "vitest";
import { canonicalJson, defaultBasis, type Scheme } from "@cornerway/schema";
import { strength } from "../../src/strength.ts";
import { sampleHazards } from "../codes-loads/sample-hazards.ts";
import { drawnUnit } from "./drawn-unit.ts";

const scheme: Scheme = {
  ...drawnUnit({ type: "1CC", openings: [{ face: "right", framed: true, fromMm: 2000, widthMm: 1200 }] }),
  basis: { ...defaultBasis, soil: { class: "sand" }, hazards: sampleHazards() },
};

describe("strength of a 20 ft unit with a framed opening on four pads", () => {
  const answer = strength(scheme);
  if (!answer.accepted) throw new Error("the sample is accepted");

  it("solves every run locked at play and tied, and what governed under five more sets, each balanced to 1 in 10⁹", () => {
    const [play, tied, ...rest] = answer.envelope;
    expect([play?.assumptions, tied?.assumptions]).toEqual(["locks at play", "locks tied"]);
    expect(play?.runs).toBe(tied?.runs);
    expect(rest.map(({ assumptions }) => assumptions)).toEqual([
      "diaphragms ×¼",
      "diaphragms ×4",
      "racking ×0.7",
      "racking ×1.3",
      "pads soft",
    ]);
    expect(answer.worstResidual).toBeLessThan(1e-9);
  });

  it("gives each part its run, its working with clause and certainty, its envelope and its coverage", () => {
    expect(answer.results.length).toBeGreaterThan(20);
    for (const result of answer.results) {
      expect(result.governingRun, result.id).not.toBe("");
      expect(result.covered, result.id).not.toBe("does not arise");
      expect(result.working === undefined, result.id).toBe(result.refused !== undefined);
      if (result.working === undefined) continue;
      expect(result.working.utilisation, result.id).toBe(result.utilisation);
      expect(result.certainty).toBe(result.working.certainty);
    }
  });

  it("covers rails, sills, headers, posts, jambs, sheets, boards, fittings and pads", () => {
    expect([...new Set(answer.results.map(({ element }) => element))].toSorted()).toEqual(
      [
        "added beam",
        "bottom side rail",
        "building",
        "corner fitting",
        "cross member",
        "door corner post",
        "door header",
        "end sheet",
        "floor boards",
        "front corner post",
        "front header",
        "jamb",
        "pad",
        "roof sheet",
        "sill",
        "side sheet",
        "top side rail",
      ].toSorted(),
    );
  });

  it("is worst first", () => {
    const order = answer.results.map(({ utilisation }) => utilisation ?? Infinity);
    expect(order).toEqual(order.toSorted((a, b) => b - a));
  });

  it("names every run without equilibrium in words with what had to be held, and a unit that lifts with nothing drawn to hold it does not work", () => {
    expect(answer.refusedRuns.length).toBeGreaterThan(0);
    for (const { words, held } of answer.refusedRuns) {
      expect(words).toMatch(/^No equilibrium/);
      expect(held).toEqual(["u1"]);
    }
    const [unit] = answer.units;
    expect(unit?.verdict).toBe("does not work");
    expect(unit?.reasons.map(({ kind }) => kind)).toContain("hold not drawn");
  });

  it("is plain data, the same in every byte when worked out again from a scheme in another order", () => {
    const again = strength({ ...scheme, pads: scheme.pads.toReversed(), loads: scheme.loads.toReversed() });
    expect(canonicalJson(again)).toBe(canonicalJson(answer));
  });
});

describe("strength", () => {
  it("refuses hazards read for another edition, and says which", () => {
    const answer = strength({ ...scheme, basis: { ...scheme.basis, hazards: sampleHazards({ edition: "IBC 2024" }) } });
    expect(answer).toMatchObject({ accepted: false, refusals: [{ code: "other-edition", hazard: "wind" }, {}, {}] });
  });

  it("throws for a scheme without containers", () => {
    expect(() => strength({ ...scheme, containers: [], openings: [], loads: [] })).toThrow(RangeError);
  });
});
