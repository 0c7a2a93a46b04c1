import { describe, expect, it } from "vitest";
import { defaultBasis, elementNames, markSentences, type Opening, type Scheme } from "@cornerway/schema";
import { analyse } from "../../src/load-path/analysis.ts";
import type { ActionCase } from "../../src/loads/action-case.ts";
import { wallsByUnit } from "../../src/strength/lateral/wall-parts.ts";
import { wallStatics } from "../../src/strength/lateral/wall-statics.ts";
import { lateralGaps } from "../../src/strength/lateral/lateral-gaps.ts";
import { modelledBearings } from "../../src/strength/modelled-bearings.ts";
import { strength } from "../../src/strength.ts";
import { assessStrength } from "../../src/assess-strength.ts";
import { sampleHazards } from "../codes-loads/sample-hazards.ts";
import { axes, drawnUnit, type DrawnOpening } from "./drawn-unit.ts";
import { basis, oneRun, ownWeight } from "./one-run.ts";
import { ordinarySchemes } from "./ordinary-schemes/ordinary-schemes.ts";

const counted = defaultBasis.sheetWalls;
const wallsOf = (scheme: Scheme, rule: Scheme["basis"]["sheetWalls"] = counted) =>
  wallsByUnit(analyse(scheme).structure, rule, basis.allowable)("u1");
const countedFaces = (scheme: Scheme, rule?: Scheme["basis"]["sheetWalls"]): string[] =>
  wallsOf(scheme, rule).flatMap(({ face, counts }) => (counts ? [face] : []));
const withDoors = (scheme: Scheme): Scheme => ({
  ...scheme,
  containers: scheme.containers.map((one) => ({ ...one, doors: "welded shut" })),
});

describe("walls of a 40 ft unit that count", () => {
  it("are both sides and the blind end; the door end only where its doors are welded shut", () => {
    expect(countedFaces(drawnUnit({}))).toEqual(["left", "right", "front"]);
    expect(countedFaces(withDoors(drawnUnit({})))).toEqual(["left", "right", "front", "door"]);
  });

  it.each<[string, DrawnOpening, string]>([
    [
      "unframed",
      { face: "right", framed: false, fromMm: 4000, widthMm: 1000 },
      "openings framed in steel not less than was removed",
    ],
    [
      "over half the wall",
      { face: "right", framed: true, fromMm: 1500, widthMm: 7000 },
      "openings at most half the wall",
    ],
  ])("leave out a side with an opening %s, and say why", (_, opening, condition) => {
    const scheme = drawnUnit({ openings: [opening] });
    expect(countedFaces(scheme)).toEqual(["left", "front"]);
    const side = wallsOf(scheme).find(({ face }) => face === "right");
    expect(side?.conditions.filter(({ holds }) => !holds).map((line) => line.condition)).toContain(condition);
  });

  it("count only pieces of 4 ft and more: 12.0 m less a 1.0 m door at 1.0 m leaves one of 9.89 m", () => {
    // from the outer face: post axis at 103.5 mm; pieces 1000 − 103.5 = 896.5 (too short) and 12 192 − 2000 − 103.5 = 10 088.5
    const scheme = drawnUnit({ openings: [{ face: "right", framed: true, fromMm: 1000, widthMm: 1000 }] });
    const side = wallsOf(scheme).find(({ face }) => face === "right");
    expect(side?.facts.piecesMm.map((piece) => Math.round(piece * 10) / 10)).toEqual([10_088.5]);
    expect(side?.counts).toBe(true);
  });

  it("are none where the engineer has left sheet walls out", () => {
    expect(countedFaces(drawnUnit({}), { rule: "left out", reason: "portals" })).toEqual([]);
  });
});

// Statics by hand: 10 kN across at the middle of the roof, held by the blind end alone: 10 kN there, and its couple 10 · 5.9925 m
// over the sides 2.259 m apart, 26.53 kN each. With the doors welded shut each end has 5 kN and the sides nothing.
describe("a push of 10 kN across the middle of a 40 ft unit", () => {
  const push: ActionCase = {
    id: "push",
    symbol: "Eh",
    loads: [{ kind: "point", elementId: "u1", at: { xMm: 0, yMm: 0, zMm: 2896 }, xN: 0, yN: 10_000, zN: 0 }],
  };
  const forces = (scheme: Scheme) => {
    const { solved, set } = oneRun(scheme, [ownWeight(scheme, 200_000), push]);
    const { building, fabric } = analyse(scheme).structure;
    const unit = building.unitById.get("u1");
    if (unit === undefined) throw new Error("the unit is there");
    expect(fabric("u1").cuts).toEqual([]);
    const own = modelledBearings(set.built, building);
    const share = wallStatics(
      unit,
      wallsOf(scheme).filter(({ counts }) => counts),
      own,
    );
    return (["front", "left", "right", "door"] as const).map((face) => Math.round(share(face, solved)));
  };

  it("turns about the blind end, and the sides hold the couple", () => {
    const couple = Math.round((10_000 * axes["1AAA"].x) / (2 * axes["1AAA"].y));
    expect(forces(drawnUnit({}))).toEqual([10_000, couple, couple, 0]);
  });

  it("is halved between the ends where the doors are welded shut", () => {
    expect(forces(withDoors(drawnUnit({})))).toEqual([5000, 0, 0, 5000]);
  });
});

describe("a storey without a wall that counts", () => {
  const blindWindow = ordinarySchemes["a window in the blind end"] ?? drawnUnit({});

  it("does not work, with what takes each wall out and what would do", () => {
    const answer = assessStrength(blindWindow);
    if (!answer.accepted) throw new Error("the sample is accepted");
    const mark = answer.assessment.marks.find(({ fact }) => fact.kind === "no-lateral-wall");
    expect(mark?.verdict).toBe("does not work");
    for (const reader of ["architect", "engineer"] as const)
      expect(mark && markSentences(mark, elementNames(blindWindow), reader).body).toContain(
        "Doors welded shut would do, or a whole blind end, or a portal in either end.",
      );
    expect(mark?.fact).toEqual({
      kind: "no-lateral-wall",
      way: "crosswise",
      walls: [
        { face: "front", fails: ["openings at most half the wall", "counted pieces at least 4 ft"] },
        { face: "door", fails: ["end doors welded shut"] },
      ],
    });
  });

  it("is none once the doors are welded shut", () => {
    const scheme = withDoors(blindWindow);
    expect(lateralGaps(scheme, wallsByUnit(analyse(scheme).structure, counted, basis.allowable))).toEqual([]);
  });

  it("is none lengthwise for a unit whose sides are out where its neighbour along has sides, but the unit says so", () => {
    const open = (["left", "right"] as const).map((face, n): Opening => ({
      ...{ id: `o${n}`, tag: "O", containerId: "u1", face, use: "open-wall", framed: true },
      ...{ offsetUm: 200_000, sillUm: 200_000, widthUm: 11_000_000, heightUm: 2_000_000 },
    }));
    const [first] = drawnUnit({}).containers;
    if (first === undefined) throw new Error("the unit is there");
    const pair = {
      ...drawnUnit({}),
      containers: [first, { ...first, id: "u2", tag: "U2", yUm: 2_488_000 }],
      openings: open,
    };
    const gaps = lateralGaps(pair, wallsByUnit(analyse(pair).structure, counted, basis.allowable));
    expect(gaps.map(({ unitId, way, wholeStorey }) => ({ unitId, way, wholeStorey }))).toEqual([
      { unitId: "u1", way: "lengthwise", wholeStorey: false },
    ]);
  });
});

describe("sides of a 40 ft unit in the wind", () => {
  const scheme = ordinarySchemes["one 40 ft"] ?? drawnUnit({});
  const side = (given: Scheme) => {
    const answer = strength(given);
    if (!answer.accepted) throw new Error("the sample is accepted");
    return answer.results.find(
      ({ place, limitState }) => place === "right wall" && limitState === "wall shear by the code",
    );
  };

  it("are held against 84 lb/ft, 1.226 N/mm, at allowable level; beyond it the sheet's own strength is the upper bound", () => {
    const result = side(scheme);
    expect(result?.working?.limit?.value).toBeCloseTo(84 * 0.0145939, 6);
    expect(result?.governingRun).toContain("0.6W");
    expect(result?.covered).toBe("bounded");
    expect(result?.utilisation).toBeGreaterThan(1);
    expect(result?.upperBound).toBeLessThan(0.2);
  });

  it("stay within a cap the engineer has raised, with his reason in the working", () => {
    const reason = "rational analysis, certified drawings of the maker";
    const raised = side({
      ...scheme,
      basis: { ...scheme.basis, sheetWalls: { rule: "cap raised", capNPerM: 4000, reason } },
    });
    expect(raised?.working?.limit?.value).toBe(4);
    expect(raised?.utilisation).toBeLessThan(1);
    expect(raised?.working?.symbols.find(({ symbol }) => symbol === "v_raised")?.source).toBe(reason);
  });
});

describe("the system named against earthquakes", () => {
  const kinds = (systems: Scheme["basis"]["systems"], scheme = drawnUnit({ type: "1CC" })): string[] => {
    const hazards = sampleHazards({ wind: { mph: 105 }, seismic: { ss: 0.15, s1: 0.06 } });
    const answer = strength({ ...scheme, basis: { ...defaultBasis, hazards, systems } });
    if (!answer.accepted) throw new Error("the sample is accepted");
    return answer.units.flatMap(({ reasons }) => reasons.map(({ kind }) => kind));
  };

  it("is left to the engineer where it is a frame, as frames are no part of the model", () => {
    expect(kinds({ x: "ordinary moment frames", y: "container sheet walls" })).toContain("seismic system not drawn");
  });

  it("may be that of a single unit where every condition of its path holds, and is closed beside a post", () => {
    const single = { x: "single unit by the simplified path", y: "single unit by the simplified path" } as const;
    expect(kinds(single)).not.toContain("simplified path closed");
    expect(kinds(single, drawnUnit({ type: "1CC", posts: [6000] }))).toContain("simplified path closed");
  });
});
