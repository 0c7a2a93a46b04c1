import { compareSchemes, type Scheme, type UnitSystem } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { changeWords } from "../../src/wording/change-words.ts";
import { namesIn } from "../../src/wording/name-of.ts";
import { demoScheme } from "../support/demo-scheme.ts";
import { furnished } from "../support/furnished.ts";

/** What is said of everything that is not the same in two schemes. */
function told(
  before: Scheme,
  after: Scheme,
  { plain = false, units = "SI" }: { plain?: boolean; units?: UnitSystem } = {},
): string[] {
  const names = [namesIn(after), namesIn(before)];
  const nameOf = (id: string) => names.map((each) => each(id)).find((name) => name !== id) ?? id;
  return compareSchemes(before, after)
    .elements.map((change) => changeWords(change, { nameOf, units, plain }))
    .map(({ name, did }) => `${name} ${did}`.trim());
}

const changed = <N extends "containers" | "openings" | "pads" | "loads" | "seats" | "beams">(
  scheme: Scheme,
  list: N,
  id: string,
  what: Partial<Scheme[N][number]>,
): Scheme => ({
  ...scheme,
  [list]: scheme[list].map((element) => (element.id === id ? { ...element, ...what } : element)),
});

const f1 = demoScheme.containers.find(({ id }) => id === "f1");
const without = (scheme: Scheme, unitId: string): Scheme => ({
  ...scheme,
  containers: scheme.containers.filter(({ id }) => id !== unitId),
  openings: scheme.openings.filter(({ containerId }) => containerId !== unitId),
  loads: scheme.loads.filter(({ containerId }) => containerId !== unitId),
});

describe("changeWords(change, telling)", () => {
  it("tells a move by its way, in the reader's units", () => {
    const moved = changed(demoScheme, "containers", "f1", { xUm: (f1?.xUm ?? 0) + 1_200_000 });
    expect(told(demoScheme, moved)).toEqual(["F1 moved 1.20 m east"]);
    // 1200 mm = 47.24 in = 3 ft 11.24 in, nearest sixteenth 3'-11 1/4"
    expect(told(demoScheme, moved, { units: "US" })).toEqual([`F1 moved 3'-11 1/4" east`]);
    expect(told(moved, demoScheme)).toEqual(["F1 moved 1.20 m west"]);
  });

  it("tells a turn, another type and another label beside the move, each once", () => {
    const what = { zUm: (f1?.zUm ?? 0) + 100_000, turnMdeg: 90_000, type: "1CC", tag: "X9" } as const;
    expect(told(demoScheme, changed(demoScheme, "containers", "f1", what))).toEqual([
      "X9 moved 0.10 m up, turned to 90°, changed to a 20 ft, 8 ft 6 in high, called F1 before",
    ]);
  });

  it("tells what is stated of an opening and of a pad", () => {
    expect(told(demoScheme, changed(demoScheme, "openings", "d1", { widthUm: 2_200_000 }))).toEqual([
      "D1 changed: width 2.200 m",
    ]);
    expect(told(demoScheme, changed(demoScheme, "pads", "b1", { lengthUm: 1_100_000 }))[0]).toMatch(
      /^B1 changed: length 1\.100 m/,
    );
  });

  it("tells a unit that came or went with the openings that came or went with it", () => {
    const less = without(demoScheme, "t1");
    expect(told(demoScheme, less)).toEqual(["T1 taken away, with W7 and W8"]);
    expect(told(less, demoScheme)[0]).toMatch(/^T1 set, a 40 ft high cube, with W7 and W8$/);
  });

  it("tells a load by where it lies, since it has no label", () => {
    const load = demoScheme.loads.find(({ id }) => id === "f3-floor");
    const heavier = changed(demoScheme, "loads", "f3-floor", { pressurePa: 4800 });
    expect(told(demoScheme, heavier)).toEqual([`the ${load?.case} load on the floor of F3 set to 4.80 kPa`]);
  });

  it("keeps sections and forces from a reader of plain words", () => {
    const beams = { ...furnished, beams: [] };
    expect(told(beams, furnished)[0]).toContain("W8x31");
    expect(told(beams, furnished, { plain: true })).toEqual(["BM1 set"]);
    const seat = changed(furnished, "seats", "s1", { packingUm: 25_000 });
    expect(told(furnished, seat)[0]).toContain("packing");
    expect(told(furnished, seat, { plain: true })).toEqual(["S1 stated otherwise"]);
    const heavier = changed(demoScheme, "loads", "f3-floor", { pressurePa: 4800 });
    expect(told(demoScheme, heavier, { plain: true })[0]).not.toMatch(/kPa|kN/);
  });
});
