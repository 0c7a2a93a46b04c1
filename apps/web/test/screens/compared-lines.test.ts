import { assess } from "@cornerway/engine";
import { compareSchemes, elementsOf, type Mark, type Premium, type Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { comparedLines, judgedOtherwise } from "../../src/screens/compare/compared-lines.ts";
import { pairOf } from "../../src/screens/compare/CompareSheet.tsx";
import { findView } from "../../src/screens/compare/find-view.ts";
import { signed, wholeFigures } from "../../src/screens/compare/whole-figures.ts";
import { namesIn } from "../../src/wording/name-of.ts";
import { schemeOf, unitAt } from "../support/schemes.ts";

/** Two 40 ft units on the ground; later a third on the first, and both of the ground 0.5 m east. */
const two = schemeOf([unitAt("g1", "G1", 0, 0, 0), unitAt("g2", "G2", 0, 2438, 0)]);
const three = schemeOf([
  unitAt("f1", "F1", 500, 0, 2896),
  unitAt("g1", "G1", 500, 0, 0),
  unitAt("g2", "G2", 500, 2438, 0),
]);
const none = { before: null, after: null };

const linesOf = (before: Scheme, after: Scheme, premium: { before: Premium | null; after: Premium | null } = none) =>
  comparedLines(
    compareSchemes(before, after).elements,
    { assessment: { before: assess(before), after: assess(after) }, premium },
    { nameOf: namesIn(after), units: "SI", plain: false },
  );

const priced = (lines: readonly { elementId: string; money: number }[]): Premium => ({
  ...{ currency: "USD", total: lines.reduce((sum, { money }) => sum + money, 0), forShow: false, notPriced: [] },
  ...{ units: [], marks: [] },
  quantities: {
    ...{ cutM: 0, weldM: [], steelKg: [], connections: [], pads: 0, padConcreteM3: 0, craneLifts: 0 },
    hours: { shop: 0, site: 0, crane: 0, engineering: 0 },
  },
  lines: lines.map((line) => ({
    ...{ containerId: null, item: "cut", section: null, quantity: 1, unit: "m", where: "shop", hours: 1 },
    ...{ hoursAt: null, piecesAt: null, forShow: false },
    ...line,
  })),
});

describe("comparedLines(changes, sides, telling)", () => {
  it("tells units that moved alike and are judged alike in one line, and a new one in another", () => {
    const sentences = linesOf(two, schemeOf([unitAt("g1", "G1", 500, 0, 0), unitAt("g2", "G2", 500, 2438, 0)]));
    expect(sentences.map(({ sentence }) => sentence)).toEqual(["G1 and G2 moved 0.50 m east."]);
    expect(linesOf(two, three).map(({ sentence }) => sentence)).toContain("F1 set, a 40 ft high cube.");
  });

  it("names what changed alike in the order of the names, whatever their ids", () => {
    const at = (xMm: number) => schemeOf([unitAt("b", "G2", xMm, 0, 0), unitAt("a", "G10", xMm, 2438, 0)]);
    expect(linesOf(at(0), at(500)).map(({ sentence }) => sentence)).toEqual(["G2 and G10 moved 0.50 m east."]);
  });

  it("is nothing for a scheme and itself", () => {
    expect(linesOf(three, structuredClone(three))).toEqual([]);
  });

  it("says that a new unit was not there, and gives what comes down through a unit before and after", () => {
    const lines = linesOf(two, three);
    const f1 = lines.find(({ ids }) => ids.includes("f1"));
    expect(f1?.there).toEqual({ before: false, after: true });
    expect(f1?.verdict.before).toBeNull();
    expect(f1?.forceKn.before).toBeNull();
    const g1 = lines.find(({ ids }) => ids.includes("g1"));
    // F1 has come down on G1 corner on corner and weighs what G1 weighs: twice the force at the foot of a post.
    expect((g1?.forceKn.after ?? 0) / (g1?.forceKn.before ?? 1)).toBeCloseTo(2, 6);
  });

  it("adds up the premium of what a line tells: 300 + 200 before, 400 + 350 after", () => {
    const moved = schemeOf([unitAt("g1", "G1", 500, 0, 0), unitAt("g2", "G2", 500, 2438, 0)]);
    const before = priced([
      { elementId: "g1", money: 300 },
      { elementId: "g2", money: 200 },
      { elementId: "other", money: 1000 },
    ]);
    const after = priced([
      { elementId: "g1", money: 400 },
      { elementId: "g2", money: 350 },
    ]);
    expect(linesOf(two, moved, { before, after })[0]?.money).toEqual({ before: 500, after: 750 });
    expect(linesOf(two, moved)[0]?.money).toEqual(none);
  });
});

describe("judgedOtherwise(stayed, assessments)", () => {
  it("finds the one element that did not change and that a mark says otherwise of", () => {
    const before = { ...assess(two), marks: [] };
    const broken: Mark = {
      ...({ id: "stands-clear:g2", verdict: "does not work", certainty: "derived", basis: "statics" } as const),
      ...{ elements: ["g2", "g1"], at: { xMm: 0, yMm: 0, zMm: 0 } },
      fact: { kind: "stands-clear", gapMm: 40, places: 2 },
    };
    const found = judgedOtherwise(["g1", "g2"], { before, after: { ...before, marks: [broken] } });
    expect(found.map(({ id, verdict }) => [id, verdict.after])).toEqual([["g2", "does not work"]]);
    expect(judgedOtherwise(["g1", "g2"], { before: null, after: before })).toEqual([]);
  });

  it("finds none where nothing changed", () => {
    const both = { before: assess(three), after: assess(three) };
    expect(
      judgedOtherwise(
        elementsOf(three).map(({ id }) => id),
        both,
      ),
    ).toEqual([]);
  });
});

describe("wholeFigures(schemes, sides, units, plain)", () => {
  const sides = { assessment: { before: assess(two), after: assess(three) }, premium: none };

  it("counts what stands in both and by how much they are apart", () => {
    const [containers] = wholeFigures({ before: two, after: three }, sides, "SI", false);
    expect(containers).toEqual({ name: "Containers", before: "2", after: "3", by: "+ 1" });
  });

  it("measures the farthest overhang on what stands, and says so, where a unit tips", () => {
    // 40 ft units are 12.192 m long: F1 8 m along has its middle past the end of G1 at 6.096 m and tips; F2 3 m along runs 3 m past it.
    const tipping = schemeOf([unitAt("f1", "F1", 8000, 0, 2896), unitAt("g1", "G1", 0, 0, 0)]);
    const standing = schemeOf([unitAt("f2", "F2", 3000, 0, 2896), unitAt("g1", "G1", 0, 0, 0)]);
    const assessment = { before: assess(tipping), after: assess(standing) };
    const figures = wholeFigures({ before: tipping, after: standing }, { assessment, premium: none }, "SI", false);
    const found = figures.find(({ name }) => name === "Farthest overhang, of what stands");
    expect(found).toMatchObject({ before: "0.00 m", after: "3.00 m", by: "+ 3.00 m" });
    const both = { before: assess(standing), after: assess(standing) };
    const names = wholeFigures({ before: standing, after: standing }, { assessment: both, premium: none }, "SI", false);
    expect(names.map(({ name }) => name)).toContain("Farthest overhang");
  });

  it("has no force for a reader of plain words", () => {
    const texts = wholeFigures({ before: two, after: three }, sides, "SI", true).flatMap((each) => Object.values(each));
    expect(texts.join(" ")).not.toMatch(/kN|kip/);
    const all = wholeFigures({ before: two, after: three }, sides, "SI", false).flatMap((each) => Object.values(each));
    expect(all.join(" ")).toMatch(/kN/);
  });

  it.each([
    [12, "+ 12"],
    [-3, "− 3"],
    [0, "none"],
    [0.2, "none"],
  ])("writes a difference of %d as %s", (by, text) => {
    expect(signed(by, (value) => String(Math.round(value)))).toBe(text);
  });
});

describe("pairOf(letters, wanted)", () => {
  it.each([
    [["A", "B", "C"], [], ["B", "C"]],
    [
      ["A", "B", "C"],
      ["C", "A"],
      ["A", "C"],
    ],
    [
      ["A", "B", "C"],
      ["C", "C"],
      ["B", "C"],
    ],
    [
      ["A", "B"],
      ["A", "Q"],
      ["A", "B"],
    ],
    [["A"], [], [null, null]],
    [[], [], [null, null]],
  ])("of %j, wanting %j, is %j", (letters, wanted, pair) => {
    expect(pairOf(letters, wanted)).toEqual(pair);
  });
});

describe("findView(changes, schemes, ids)", () => {
  it("turns to the north for a window in the north wall, which the south does not show", () => {
    const window = {
      ...({ id: "w1", tag: "W1", containerId: "g2", face: "left", use: "window", framed: true } as const),
      ...{ offsetUm: 3_000_000, sillUm: 900_000, widthUm: 1_000_000, heightUm: 1_000_000 },
    };
    const after = { ...two, openings: [window] };
    const { elements } = compareSchemes(two, after);
    expect(findView(elements, { before: two, after }, ["w1"])).toEqual({ side: "north" });
    expect(findView(elements, { before: two, after }, ["g1"])).toBeNull();
  });
});
