import { describe, expect, it, vi } from "vitest";
import type { Opening, Scheme } from "@cornerway/schema";
import type { ElementResult } from "../../src/strength/element-result.ts";
import { liftResults } from "../../src/strength/lift-results.ts";
import * as solveRuns from "../../src/strength/solve-runs.ts";
import { strengthMemory } from "../../src/strength/strength-memory.ts";
import { unitStrength } from "../../src/strength/unit-strength.ts";
import { drawnUnit } from "./drawn-unit.ts";
import { basis } from "./one-run.ts";

const lifted = (scheme: Scheme): ElementResult[] => liftResults(scheme, basis, strengthMemory());
const valueOf = (result: ElementResult | undefined, symbol: string): number =>
  result?.working?.symbols.find((one) => one.symbol === symbol)?.value ?? Number.NaN;
const worstMember = (scheme: Scheme): number =>
  Math.max(
    ...lifted(scheme).flatMap(({ element, utilisation = Infinity }) =>
      element === "corner fitting" ? [] : [utilisation],
    ),
  );

/** 4200 kg of tare at its most, twice, and 1.4 of that. */
const PICK_N = 1.4 * 2 * 4200 * 9.81;

describe("a whole 40 ft unit on two diagonal fittings", () => {
  const results = lifted(drawnUnit({}));

  it("pulls each with half of 1.4 · 2 · tare, against the proof load of the ISO lift", () => {
    const [fitting] = results.filter(({ element }) => element === "corner fitting");
    expect(valueOf(fitting, "demand")).toBeCloseTo(PICK_N / 2, 0);
    // 0.9 · 150 kN
    expect(fitting?.working?.limit?.value).toBeCloseTo(135_000, 6);
  });

  // Twist of a closed box of six panels (shared reference, derived): flows P/(2H) with P = W/4, as the diagonal takes all and
  // each corner has its quarter. Own weight adds (W/4)/H at the end of a side, less what hangs in the metre that is averaged.
  it("twists and bends: its sides flow by W/4 over 2H and by W/4 over H, to a tenth", () => {
    const [most] = results;
    expect(most?.limitState).toBe("sheet shear buckling");
    const flow = (3 * (PICK_N / 4)) / (2 * 2896);
    expect(Math.abs(valueOf(most, "demand") / flow - 1)).toBeLessThan(0.1);
  });

  it("is the engineer's where a part is beyond its strength, as a lift has its own plan", () => {
    for (const { covered } of results) expect(covered).toBe("bounded");
  });
});

describe("a 40 ft unit with 2.4 m out of a side, from rail to rail", () => {
  const cut: Pick<Opening, "face" | "framed"> = { face: "left", framed: true };
  const scheme = drawnUnit({ openings: [{ ...cut, fromMm: 4896, widthMm: 2400 }] });
  const later: Scheme = { ...scheme, openings: scheme.openings.map((one) => ({ ...one, cut: "after placing" })) };

  it("has rails beyond their strength when it is picked so, and is as a whole one where the cut comes after placing", () => {
    expect(worstMember(scheme)).toBeGreaterThan(1);
    expect(worstMember(later)).toBeCloseTo(worstMember(drawnUnit({})), 6);
  });

  it("is relieved by rigging that equalises", () => {
    const { lifting } = scheme.basis;
    const equal: Scheme = { ...scheme, basis: { ...scheme.basis, lifting: { ...lifting, equalised: true } } };
    expect(worstMember(equal)).toBeLessThan(0.6 * worstMember(scheme));
  });
});

// Both sides cut through at one place, rails and all: two halves that roof sheet and floor join as hinges do. Each would have to
// carry half of the weight on two fittings at its own end, W/2 with its lever of a quarter of the length: nothing holds that moment.
describe("a 40 ft unit whose sides are both cut through, rails and all, when it is picked", () => {
  const through = (face: "left" | "right", cut?: "after placing"): Opening => ({
    ...{ id: `o-${face}`, tag: "O", containerId: "u1", face, use: "door", framed: false },
    ...{ offsetUm: 5_000_000, sillUm: 0, widthUm: 2_000_000, heightUm: 2_896_000 },
    ...(cut && { cut }),
  });
  const openings = [through("left"), through("right")];
  const fallsOf = (results: readonly ElementResult[]) => results.filter(({ refused }) => refused !== undefined);

  it("is said to hang without equilibrium, which needs the engineer; nothing is told of its parts", () => {
    const results = lifted({ ...drawnUnit({}), openings });
    const [falls, ...more] = fallsOf(results);
    expect(falls).toMatchObject({
      ...{ ownerId: "u1", element: "building", place: "hanging, lifted", limitState: "stability while set up" },
      ...{ refused: "nothing resists it", covered: "bounded" },
    });
    expect(more).toEqual([]);
    expect(results.every(({ element }) => element === "building" || element === "corner fitting")).toBe(true);
    const { reasons, verdict } = unitStrength({
      ...{ unitId: "u1", results, holds: [], refused: [], runs: 1, withSteel: false, given: [] },
    });
    expect(verdict).toBe("needs the engineer");
    expect(reasons).toEqual([{ kind: "strength refused", partId: falls?.id, why: "nothing resists it" }]);
  });

  it("hangs together where the cuts come after placing", () => {
    const later = [through("left", "after placing"), through("right", "after placing")];
    expect(fallsOf(lifted({ ...drawnUnit({}), openings: later }))).toEqual([]);
  });
});

describe("where a unit stands and how it is turned", () => {
  it("changes nothing of its lift, to 1 in 10⁶", () => {
    const scheme = drawnUnit({ openings: [{ face: "left", framed: true, fromMm: 4896, widthMm: 1200 }] });
    const moved: Scheme = {
      ...scheme,
      containers: scheme.containers.map((one) => ({
        ...one,
        xUm: 7_000_000,
        yUm: -3_000_000,
        zUm: 2_896_000,
        turnMdeg: 90_000,
      })),
    };
    const [here, there] = [lifted(scheme), lifted(moved)];
    expect(there.map(({ id }) => id)).toEqual(here.map(({ id }) => id));
    there.forEach(({ utilisation }, n) => expect(utilisation).toBeCloseTo(here[n]?.utilisation ?? NaN, 6));
  });
});

describe("containers that are alike", () => {
  const one = drawnUnit({ openings: [{ face: "left", framed: true, fromMm: 4896, widthMm: 1200 }] });
  const [first] = one.containers;
  if (first === undefined) throw new Error("the sample has a container");
  const other = { ...first, id: "another", yUm: 9_000_000, turnMdeg: 180_000 };
  const both: Scheme = {
    ...one,
    containers: [first, other],
    openings: [...one.openings, ...one.openings.map((cut) => ({ ...cut, containerId: other.id }))],
  };
  const solved = vi.spyOn(solveRuns, "solveBuilt");
  const results = lifted(both);
  const times = solved.mock.calls.length;

  it("are hung once", () => {
    expect(times).toBe(1);
  });

  it("say the same to the bit, each under its own name, also each alone", () => {
    const renamed = (id: string) =>
      results
        .filter(({ ownerId, element }) => ownerId === id && element !== "corner fitting")
        .map((result) => JSON.parse(JSON.stringify(result).replaceAll(id, "it")) as unknown);
    expect(renamed(first.id).length).toBeGreaterThan(0);
    expect(renamed(other.id)).toEqual(renamed(first.id));
    const alone = lifted({ ...both, containers: [other] }).filter(({ element }) => element !== "corner fitting");
    expect(alone).toEqual(
      results.filter(({ ownerId, element }) => ownerId === other.id && element !== "corner fitting"),
    );
  });

  it("are not hung as one where a cut differs", () => {
    solved.mockClear();
    lifted({ ...both, openings: one.openings });
    expect(solved).toHaveBeenCalledTimes(2);
  });
});
