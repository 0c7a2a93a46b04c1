import { foldLines, elevationFaces, elevationPads, sectionWidthMm } from "@cornerway/engine";
import { applyOperations, emptyScheme, type Opening, type Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { demoScheme } from "../support/demo-scheme.ts";

const opening: Opening = {
  id: "d1",
  tag: "D1",
  containerId: "a1",
  face: "right",
  use: "door",
  offsetUm: 1_000_000,
  sillUm: 162_000,
  widthUm: 2_000_000,
  heightUm: 2_100_000,
  framed: false,
};

/** One 40 ft high cube with its base centre at the datum and a door 1.0 to 3.0 m from the front end of its right side. */
function oneUnit(turnMdeg: number): Scheme {
  const applied = applyOperations(emptyScheme, [
    { kind: "container.place", container: { id: "a1", tag: "A1", type: "1AAA", xUm: 0, yUm: 0, zUm: 0, turnMdeg } },
    { kind: "opening.cut", opening },
  ]);
  if (!applied.ok) throw new Error(applied.refusal.reason);
  return applied.scheme;
}

describe("a face on an elevation", () => {
  it("is 12.192 by 2.896 m for a 40 ft high cube seen from its right side (ISO 668)", () => {
    const [face] = elevationFaces(oneUnit(0), "south");
    expect(face).toMatchObject({
      face: "right",
      u0Mm: -6096,
      u1Mm: 6096,
      z0Mm: 0,
      z1Mm: 2896,
      along: 1,
      depthMm: -1219,
    });
  });

  it("has its openings from the front end: to the right from the south, to the left when the unit is turned about", () => {
    const [straight] = elevationFaces(oneUnit(0), "south");
    const [turned] = elevationFaces(oneUnit(180_000), "north");
    expect(straight?.openings[0]).toMatchObject({ u0Mm: -5096, u1Mm: -3096, z0Mm: 162, z1Mm: 2262 });
    // Turned by 180° the front end lies east, which is at the left of someone looking from the north; the face runs right again.
    expect(turned?.openings[0]?.u0Mm).toBeCloseTo(-5096, 6);
  });

  it("shows no opening of the other side", () => {
    expect(elevationFaces(oneUnit(0), "north")[0]?.openings).toEqual([]);
  });

  it("of a unit turned by 30° is two faces, each as long as its length times the cosine of its angle", () => {
    const faces = elevationFaces(oneUnit(30_000), "south");
    const lengths = faces.map(({ face, u0Mm, u1Mm }) => [face, u1Mm - u0Mm] as const);
    // cos 30° = 0.866025…, sin 30° = 0.5: 12192 × 0.866025 = 10558.6 and 2438 × 0.5 = 1219.
    expect(new Map(lengths).get("right")).toBeCloseTo(10_558.58, 1);
    expect(new Map(lengths).get("front")).toBeCloseTo(1219, 6);
  });

  it("comes after every face behind it, so that nearer ones cover", () => {
    const depths = elevationFaces(demoScheme, "south").map(({ nearestMm }) => nearestMm);
    expect(depths).toEqual(depths.toSorted((a, b) => b - a));
  });

  it("is beyond where its storey has another unit in front of it", () => {
    const beyond = elevationFaces(demoScheme, "south")
      .filter((face) => face.beyond)
      .map(({ container }) => container.tag);
    expect(beyond).toContain("F2");
    expect(beyond).not.toContain("F1");
  });
});

describe("corrugation", () => {
  const sheet = { u0Mm: 0, u1Mm: 2780, z0Mm: 150, z1Mm: 2800 };

  it("has a fold at each half pitch, every second one light", () => {
    const folds = foldLines(sheet, 278, []);
    expect(folds).toHaveLength(20);
    for (const [index, { uMm }] of folds.slice(1).entries()) expect(uMm - (folds[index]?.uMm ?? 0)).toBeCloseTo(139, 9);
    expect(folds.filter(({ light }) => light)).toHaveLength(10);
  });

  it("stops at an opening and goes on above and below it", () => {
    const window = { u0Mm: 1000, u1Mm: 1800, z0Mm: 900, z1Mm: 2100 };
    const folds = foldLines(sheet, 278, [window]);
    const runsOf = (between: (uMm: number) => boolean) =>
      folds.filter(({ uMm }) => between(uMm)).map(({ runsMm }) => runsMm);
    const cut = runsOf((uMm) => uMm > 1000 && uMm < 1800);
    const whole = runsOf((uMm) => uMm < 970 || uMm > 1830);
    expect(cut.length).toBeGreaterThan(4);
    expect(cut).toEqual(
      cut.map(() => [
        { z0Mm: 150, z1Mm: 900 },
        { z0Mm: 2100, z1Mm: 2800 },
      ]),
    );
    expect(whole.length).toBeGreaterThan(10);
    expect(whole).toEqual(whole.map(() => [{ z0Mm: 150, z1Mm: 2800 }]));
  });
});

describe("the breadth of a section", () => {
  it.each([
    // AISC: 4 × 4 in, 101.6 mm; the metric name rounds.
    ["HSS 102×102×6.4", 101.6],
    ["W 150 x 13", 150],
    ["pipe", 100],
  ])("of %s is drawn %d mm", (section, widthMm) => {
    expect(sectionWidthMm(section)).toBe(widthMm);
  });
});

describe("pads on the south elevation of the demo", () => {
  it("are drawn in section under the south front, and as an outline where they stand behind it", () => {
    const pads = elevationPads(demoScheme, "south", elevationFaces(demoScheme, "south"));
    const southFrontMm = -1219;
    expect(pads.length).toBeGreaterThan(1);
    for (const { depthMm, behind } of pads) expect(behind).toBe(depthMm > southFrontMm + 700);
  });
});
