import { assess } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { bearingOf, factsOf, verdictOf } from "../../../../tests/support/marks-of.ts";
import { padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";

const g1 = { id: "g1", type: "1CC", x: 0, y: 0 } as const;
const g2 = { ...g1, id: "g2", y: 2438 + 50 } as const;
const kinds = (assessment: ReturnType<typeof assess>) => assessment.marks.map(({ fact }) => fact.kind);

describe("strips and slabs", () => {
  // Two strips across under the ends of two units: holes at ±2926.5.
  const strips = [-2926.5, 2926.5].map((x, at) => ({
    id: `b${at}`,
    x,
    y: 1244,
    length: 500,
    width: 5200,
    kind: "strip" as const,
  }));
  const slab = { id: "slab", x: 0, y: 1244, length: 7000, width: 6000, kind: "slab" } as const;

  it("bear several units: two on two strips, or all on one slab, work as built", () => {
    for (const pads of [strips, [slab]]) {
      const assessment = assess(schemeOf({ units: [g1, g2], pads }));
      expect(kinds(assessment)).toEqual(["borne-on-fittings", "borne-on-fittings"]);
      expect(assessment.statics.residualKn).toBe(0);
    }
  });

  it("may run into each other, as they are cast; pads by themselves may not", () => {
    const assessment = assess(schemeOf({ units: [g1, g2], pads: [...strips, slab] }));
    expect(factsOf(assessment, "collision")).toEqual([]);
    expect(factsOf(assessment, "pad-holds-nothing")).toEqual([]);
    const alone = strips.map(({ kind: _kind, ...pad }) => pad);
    expect(factsOf(assess(schemeOf({ units: [g1, g2], pads: [...alone, slab] })), "collision").length).toBe(2);
  });

  it("bear a fitting that lies half on one and half on the other at one level", () => {
    // The strip's edge runs through the fitting: 2926.5 − 89 … + 89; a slab at the same level takes the rest.
    const halves = [
      { id: "s1", x: 2926.5 + 250, y: 1244, length: 500, width: 5200, kind: "strip" as const },
      { id: "s2", x: 2926.5 - 1000, y: 1244, length: 2000, width: 5200, kind: "slab" as const },
      { id: "s3", x: -2926.5, y: 1244, length: 500, width: 5200, kind: "strip" as const },
    ];
    expect(factsOf(assess(schemeOf({ units: [g1, g2], pads: halves })), "off-its-pad")).toEqual([]);
    const lower = halves.map((pad) => (pad.id === "s2" ? { ...pad, top: -50 } : pad));
    expect(factsOf(assess(schemeOf({ units: [g1, g2], pads: lower })), "off-its-pad").length).toBeGreaterThan(0);
  });

  it("bear a rail where they cross under it, not where their own middle lies", () => {
    // A strip across, 1000 mm west of the middle, turned 30°: at the rails, 1195 from its middle, it lies 1195 × tan 30° =
    // 689.9 mm further west on the left and further east on the right.
    const crossing = { id: "b9", x: -1000, y: 0, length: 400, width: 4000, turn: 30, kind: "strip" as const };
    const assessment = assess(schemeOf({ units: [g1], pads: [...padsUnder(g1), crossing] }));
    expect(bearingOf(assessment, "g1:left-rail:b9")?.at.xMm).toBeCloseTo(-1000 - 1195 / Math.sqrt(3), 2);
    expect(bearingOf(assessment, "g1:right-rail:b9")?.at.xMm).toBeCloseTo(-1000 + 1195 / Math.sqrt(3), 2);
  });

  it("have no middle for a post to stand on: a slab none, a strip none along it", () => {
    const post = { id: "p1", x: 9000, y: 300, foot: 0, head: 3000 };
    const off = (kind: "strip" | "slab" | undefined, x: number) =>
      factsOf(
        assess(
          schemeOf({
            units: [g1],
            pads: [
              ...padsUnder(g1),
              { id: "b9", x, y: 0, length: 500, width: 1500, ...(kind === undefined ? {} : { kind }) },
            ],
            posts: [post],
          }),
        ),
        "post-off-centre",
      ).map(({ offsetMm }) => offsetMm);
    expect(off(undefined, 9000)).toEqual([300]);
    expect(off("strip", 9000)).toEqual([]);
    expect(off("strip", 9100)).toEqual([100]);
    expect(off("slab", 9100)).toEqual([]);
  });
});

describe("level errors drawn", () => {
  const pads = padsUnder(g1);

  it("of one pad make the unit rock by as much, low or high", () => {
    for (const error of [-8, 8]) {
      const uneven = pads.map((pad, at) => (at === 0 ? { ...pad, error } : pad));
      const assessment = assess(schemeOf({ units: [g1], pads: uneven }));
      expect(factsOf(assessment, "rocks").map(({ gapMm }) => gapMm)).toEqual([8]);
      expect(verdictOf(assessment, "g1")).toBe("not checked");
    }
  });

  it("of all pads alike leave it clear by as much, or change nothing where they are high", () => {
    const clear = assess(schemeOf({ units: [g1], pads: pads.map((pad) => ({ ...pad, error: -12 })) }));
    expect(factsOf(clear, "stands-clear")).toMatchObject([{ gapMm: 12, places: 4 }]);
    const high = assess(schemeOf({ units: [g1], pads: pads.map((pad) => ({ ...pad, error: 12 })) }));
    expect(factsOf(high, "collision")).toEqual([]);
    expect(factsOf(high, "rocks")).toEqual([]);
  });

  it("of a post leave the fitting over it clear", () => {
    const f1 = { ...g1, id: "f1", x: 3500, z: 2591 } as const;
    const posts = [-1129.5, 1129.5].map((y, at) => ({
      id: `p${at}`,
      x: 6426.5,
      y,
      foot: 0,
      head: 2591,
      error: at === 0 ? -7 : 0,
    }));
    const under = posts.map(({ id, x, y }) => ({ id: `${id}-pad`, x, y }));
    const assessment = assess(schemeOf({ units: [g1, f1], pads: [...pads, ...under], posts }));
    expect(bearingOf(assessment, "f1:door-right")).toMatchObject({ on: "post", gapMm: 7 });
    expect(bearingOf(assessment, "f1:door-left")).toMatchObject({ on: "post", gapMm: 0 });
  });

  it("within 2 mm are closed on site", () => {
    const assessment = assess(
      schemeOf({ units: [g1], pads: pads.map((pad, at) => ({ ...pad, error: at })).slice(0, 4) }),
    );
    expect(factsOf(assessment, "rocks").map(({ gapMm }) => gapMm)).toEqual([3]);
    const little = assess(
      schemeOf({ units: [g1], pads: pads.map((pad, at) => ({ ...pad, error: at % 2 === 0 ? -1 : 1 })) }),
    );
    expect(kinds(little)).toEqual(["borne-on-fittings"]);
  });
});
