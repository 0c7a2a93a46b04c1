import { describe, expect, it } from "vitest";
import type { ActionCase } from "../../src/loads/action-case.ts";
import { designRuns, type RunCases } from "../../src/loads/design-runs.ts";
import type { LoadSymbol } from "../../src/loads/load-symbol.ts";
import { notionalLoading } from "../../src/loads/notional-runs.ts";
import { sampleHazards } from "../codes-loads/sample-hazards.ts";
import { basis, framed, snowOf, sumOf, windOf } from "./building-actions.ts";
import { deadCase } from "../../src/loads/dead-cases.ts";
import { sampleScheme, smallBuildings } from "./sample-scheme.ts";

const bare = (id: string, symbol: LoadSymbol): ActionCase => ({ id, symbol, loads: [] });
const cases = (change: Partial<RunCases> = {}): RunCases => ({
  deadMost: bare("D most", "D"),
  deadLeast: bare("D least", "D"),
  deadBare: bare("D bare", "D"),
  imposed: [bare("L everywhere", "L"), bare("L one", "L")],
  roofLive: [],
  snow: [bare("S", "S")],
  wind: [bare("W1 +x inside pressure", "W"), bare("W2 +x clockwise inside pressure", "W")],
  earthquake: [bare("E", "Eh")],
  movements: [bare("T", "T")],
  ...change,
});
const request = {
  level: "strength",
  halfCompanionLive: false,
  overstrength: false,
  earthquake: { verticalShare: 0.1, redundancy: 1.3, overstrength: 2.5 },
} as const;

describe("designRuns", () => {
  const runs = designRuns(cases(), basis, request);
  const idsOf = (text: string) =>
    runs.filter(({ id }) => id.startsWith(`${text}:`)).map(({ id }) => id.slice(text.length + 2));

  it("try imposed patterns where imposed load leads, with moved supports beside it everywhere", () => {
    expect(idsOf("1.2D + 1.6L + 0.5S")).toEqual([
      "D most, L everywhere, S",
      "D most, L one, S",
      "D most, L everywhere, S, T",
    ]);
  });

  it("take imposed load everywhere or nowhere beside wind, earthquake and roof loads", () => {
    expect(idsOf("1.2D + 1.6S + L")).toEqual(["D most, L everywhere, S", "D most, S", "D most, L everywhere, S, T"]);
    expect(idsOf("1.2D + W + L + 0.5S")).toHaveLength(4); // two winds, with and without L
    expect(idsOf("1.2D + Ev + Eh + L + 0.2S")).toEqual(["D most, L everywhere, S, E", "D most, S, E"]);
  });

  it("take the least dead load where it holds down, in wind that of bare units, and no imposed load with it", () => {
    expect(idsOf("0.9D + W")).toEqual(["D bare, W1 +x inside pressure", "D bare, W2 +x clockwise inside pressure"]);
    expect(runs.find(({ id }) => id.startsWith("0.9D − Ev + Eh"))?.factors).toEqual({
      "D least": expect.closeTo(0.8, 12),
      E: 1.3,
    });
  });

  it("leave turned wind cases to the rows where wind leads", () => {
    expect(idsOf("1.2D + 1.6S + 0.5W")).toEqual(["D most, S, W1 +x inside pressure"]);
  });

  it("have names of their own", () => {
    expect(new Set(runs.map(({ id }) => id)).size).toBe(runs.length);
  });

  it("are those of these cases, this request and no others that were asked about before", () => {
    const unlike = cases({ earthquake: [bare("another E", "Eh")], wind: [] });
    const [others, shaken, again] = [
      designRuns(unlike, basis, request),
      designRuns(cases(), basis, { ...request, earthquake: { ...request.earthquake, redundancy: 1 } }),
      designRuns(cases(), basis, request),
    ];
    expect(others.every(({ factors }) => !("E" in factors) && !Object.keys(factors).some((id) => id[0] === "W"))).toBe(
      true,
    );
    expect(shaken.find(({ id }) => id.startsWith("0.9D − Ev + Eh"))?.factors["E"]).toBe(1);
    expect(again).toEqual(runs);
  });

  it("stay under 400 vectors at strength level for two storeys of a real building", () => {
    const scheme = sampleScheme(smallBuildings["an overhang of 3 m"]);
    const real = cases({ snow: snowOf(scheme, sampleHazards()), wind: windOf(scheme, sampleHazards()) });
    expect(designRuns(real, basis, request).length).toBeLessThan(400);
  });
});

describe("notionalLoading", () => {
  // 1.4D: 1.4·41.202 kN = 57.683 kN; 0.2 % = 115.37 N. Finer: 4200 kg·9.81 = 41 202 N.
  it("pushes each gravity run by 0.2 % of its own load, in four directions", () => {
    const scheme = sampleScheme(smallBuildings["one 40 ft high-cube"]);
    const deadMost = deadCase(scheme, "most");
    const all = cases({ deadMost, imposed: [], snow: [], wind: [], earthquake: [], movements: [] });
    const pushed = notionalLoading(framed(scheme), designRuns(all, basis, request), [deadMost], basis.notional);
    const runs = pushed.runs.filter(({ id }) => id.startsWith("1.4D:"));
    const pushOf = ({ factors }: (typeof runs)[number]) =>
      pushed.cases.reduce<readonly number[]>(
        ([x = 0, y = 0], action) => {
          const { xN, yN } = sumOf(scheme, action);
          const times = factors[action.id] ?? 0;
          return [x + times * xN, y + times * yN];
        },
        [0, 0],
      );
    const push = 0.002 * 1.4 * 41_202;
    expect(runs.map(pushOf)).toEqual([
      [expect.closeTo(push, 6), 0],
      [expect.closeTo(-push, 6), 0],
      [0, expect.closeTo(push, 6)],
      [0, expect.closeTo(-push, 6)],
    ]);
    expect(runs.map(({ factors }) => factors["D most"])).toEqual([1.4, 1.4, 1.4, 1.4]);
  });

  // ASCE 7-16 2.4: allowable-level analysis takes 1.6 times the share
  it("pushes 1.6 times as hard at allowable level", () => {
    const scheme = sampleScheme(smallBuildings["one 40 ft high-cube"]);
    const deadMost = deadCase(scheme, "most");
    const all = cases({ deadMost, imposed: [], snow: [], wind: [], earthquake: [], movements: [] });
    const allowable = designRuns(all, basis, { ...request, level: "allowable" });
    const { runs } = notionalLoading(framed(scheme), allowable, [deadMost], basis.notional);
    expect(runs[0]?.factors).toEqual({ "D most": 1, "N x of D most": 1.6 });
  });
});
