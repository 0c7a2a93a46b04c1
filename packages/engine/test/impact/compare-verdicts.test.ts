import { assess, compareVerdicts, worsenedSubjects } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";

const g1 = { id: "g1", type: "1CC", x: 0, y: 0 } as const;
const pads = padsUnder(g1);
const window = { id: "d1", in: "g1", face: "left", at: 2000, sill: 900, width: 1500, height: 1000 } as const;
const ids = (marks: readonly { id: string }[]) => marks.map(({ id }) => id).toSorted();
const turned = (pairs: readonly { after: { id: string } }[]) => ids(pairs.map(({ after }) => after));

const stacked = (x: number, cuts: Parameters<typeof schemeOf>[0]["cuts"] = []) =>
  assess(schemeOf({ units: [g1, { ...g1, id: "f1", x, z: 2591 }], pads, cuts }));

describe("two assessments compared", () => {
  it("say nothing where they are the same", () => {
    const compared = compareVerdicts(stacked(0), stacked(0));
    const { appeared, gone, worse, better, heavier, units } = compared;
    expect([appeared, gone, worse, better, heavier, units]).toEqual([[], [], [], [], [], []]);
    expect(worsenedSubjects(compared)).toEqual([]);
  });

  it("name what a shift off the corners brings and takes away, and every unit it makes worse", () => {
    const compared = compareVerdicts(stacked(0), stacked(1000));
    // One end on the rail, below the face of the fittings at the other end: it rocks until packed.
    expect(compared.appeared.map(({ fact }) => fact.kind).toSorted()).toEqual(["borne-on-rail", "overhang", "rocks"]);
    // Corner on corner both units said so themselves; now each is named by a cause.
    expect(compared.gone.map(({ fact }) => fact.kind)).toEqual(["borne-on-fittings", "borne-on-fittings"]);
    expect(compared.units).toEqual([
      { unitId: "f1", before: "works as built", after: "not checked" },
      { unitId: "g1", before: "works as built", after: "not checked" },
    ]);
    expect(worsenedSubjects(compared).toSorted()).toEqual([...ids(compared.appeared), "f1", "g1"].toSorted());
  });

  it("call the way back better, never worse", () => {
    const compared = compareVerdicts(stacked(1000), stacked(0));
    expect(compared.units.map(({ after }) => after)).toEqual(["works as built", "works as built"]);
    expect(worsenedSubjects(compared)).toEqual([]);
  });

  it("call a mark heavier whose figure grows at the same verdict: 1,000 mm of overhang become 1,500", () => {
    const [near, far] = [stacked(1000), stacked(1500)];
    const lengths = [near, far].map(({ marks }) =>
      marks.flatMap(({ fact }) => ("lengthMm" in fact ? [fact.lengthMm] : [])),
    );
    expect(lengths).toEqual([[1000], [1500]]);
    const there = compareVerdicts(near, far);
    expect(turned(there.heavier)).toContain(near.marks.find(({ fact }) => fact.kind === "overhang")?.id);
    expect(worsenedSubjects(there)).toEqual([]);
    const back = compareVerdicts(far, near);
    expect(turned(back.heavier)).not.toContain(near.marks.find(({ fact }) => fact.kind === "overhang")?.id);
  });

  it("call a mark worse whose verdict falls: an overhang that tips", () => {
    const compared = compareVerdicts(stacked(1000), stacked(3500));
    const fallen = compared.appeared.filter(({ verdict }) => verdict === "does not work");
    expect(fallen.map(({ fact }) => fact.kind)).toContain("tips-over");
    expect(worsenedSubjects(compared)).toEqual(expect.arrayContaining([...fallen.map(({ id }) => id), "f1"]));
    expect(compared.whole).toEqual({ before: "not checked", after: "does not work" });
  });

  it("tell units that came or went from units that turned", () => {
    const alone = assess(schemeOf({ units: [g1], pads }));
    expect(compareVerdicts(alone, stacked(0)).units).toEqual([{ unitId: "f1", before: null, after: "works as built" }]);
    expect(compareVerdicts(stacked(0), alone).units).toEqual([{ unitId: "f1", before: "works as built", after: null }]);
  });

  it("name a mark of another verdict once, as worse one way and better the other", () => {
    const [low, through] = [stacked(0, [window]), stacked(0, [{ ...window, width: 1600 }])];
    expect(turned(compareVerdicts(low, through).heavier)).toEqual(
      ids(low.marks.filter(({ fact }) => fact.kind === "opening-in-sheet")),
    );
    const [before] = low.marks;
    if (before === undefined) throw new Error("no mark");
    const fallen = {
      ...low,
      marks: low.marks.map((mark) => (mark === before ? { ...mark, verdict: "does not work" as const } : mark)),
    };
    expect(turned(compareVerdicts(low, fallen).worse)).toEqual([before.id]);
    expect(turned(compareVerdicts(fallen, low).better)).toEqual([before.id]);
    expect(compareVerdicts(low, fallen).heavier).toEqual([]);
  });
});
