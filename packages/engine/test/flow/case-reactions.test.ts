import { defaultBasis } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { loadFlow } from "../../src/load-flow.ts";
import { sampleHazards } from "../codes-loads/sample-hazards.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";

const flowOf = (scheme: ReturnType<typeof drawnUnit>) => {
  const flow = loadFlow(scheme);
  if (!flow.accepted) throw new Error("the sample is accepted");
  return flow;
};
const hazards = { ...defaultBasis, soil: { class: "sand" as const }, hazards: sampleHazards() };
const scheme = { ...drawnUnit({ type: "1CC" }), basis: hazards };

describe("what the ground gives to each case", () => {
  const cases = flowOf(scheme).byCase();
  const sum = (symbol: string, id: (name: string) => boolean, way: "upKn" | "eastKn") =>
    cases
      .filter((one) => one.symbol === symbol && id(one.caseId))
      .map(({ reactions }) => (reactions ?? []).reduce((all, one) => all + one[way], 0));

  it("is told for dead, imposed, roof, snow, wind and earthquake, each by itself", () => {
    expect(new Set(cases.map(({ symbol }) => symbol))).toEqual(new Set(["D", "L", "Lr", "S", "W", "Eh"]));
    expect(cases.every(({ reactions }) => reactions?.length === 4)).toBe(true);
  });

  it("is, for imposed load, the pressure times the floor: 2.4 kPa on 6.058 × 2.438 m, a quarter at each corner", () => {
    const [everywhere] = cases.filter(({ caseId }) => caseId === "L everywhere");
    const byHand = 2.4 * 6.058 * 2.438;
    expect(sum("L", (id) => id === "L everywhere", "upKn")[0]).toBeCloseTo(byHand, 2);
    for (const { upKn } of everywhere?.reactions ?? []) expect(Math.abs(upKn - byHand / 4)).toBeLessThan(0.02 * byHand);
  });

  it("pulls at one side and presses at the other under earthquake, and gives no more up than down", () => {
    const quake = cases.filter(({ symbol }) => symbol === "Eh");
    expect(quake.length).toBeGreaterThan(3);
    for (const { reactions } of quake) {
      const ups = (reactions ?? []).map(({ upKn }) => upKn);
      expect(Math.max(...ups)).toBeGreaterThan(0);
      expect(Math.min(...ups)).toBeLessThan(0);
      expect(Math.abs(ups.reduce((all, up) => all + up, 0))).toBeLessThan(0.01);
    }
  });

  it("turns round with the earthquake: +x and −x differ by their sign", () => {
    const [plus, minus] = ["E +x anticlockwise", "E -x clockwise"].map((id) =>
      cases.find(({ caseId }) => caseId.startsWith(id)),
    );
    plus?.reactions?.forEach(({ eastKn }, n) => expect(eastKn).toBeCloseTo(-(minus?.reactions?.[n]?.eastKn ?? NaN), 1));
    expect(plus?.reactions).toHaveLength(4);
  });
});

describe("largest and least forces of a member", () => {
  it("hold over every run that stands: no run of the plan presses it more", () => {
    const flow = flowOf(drawnUnit({ type: "1CC" }));
    const members = flow.members();
    const post = members.find(({ part, place }) => part === "front corner post" && place === "left");
    const strengthRuns = flow.runs.filter(({ level }) => level === "strength");
    const each = strengthRuns.slice(0, 12).flatMap(({ id }) => {
      const forces = flow.of({ run: id });
      return forces === null || forces.held.length > 0 ? [] : [forces];
    });
    const pressed = each.map(
      ({ members: own }) =>
        own.find(({ part, place }) => part === "front corner post" && place === "left")?.pressed.value ?? NaN,
    );
    expect(each.length).toBeGreaterThan(3);
    expect(Math.max(...pressed)).toBeLessThanOrEqual((post?.pressed.value ?? NaN) + 0.001);
    expect(strengthRuns.map(({ id }) => id)).toContain(post?.pressed.run);
    const governs = flow.of({ run: post?.pressed.run ?? "" });
    const again = governs?.members.find(({ part, place }) => part === "front corner post" && place === "left");
    expect(again?.pressed.value).toBeCloseTo(post?.pressed.value ?? NaN, 2);
  });
});
