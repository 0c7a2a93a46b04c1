import { describe, expect, it } from "vitest";
import type { Opening } from "@cornerway/schema";
import { compartments } from "../../src/loads/compartments.ts";
import { envelopes } from "../../src/loads/envelopes.ts";
import { skinPressures } from "../../src/loads/cladding-parts.ts";
import { sampleHazards } from "../codes-loads/sample-hazards.ts";
import { basis, framed } from "./building-actions.ts";
import { idOf, sampleScheme, smallBuildings } from "./sample-scheme.ts";

const opening = (change: Partial<Opening>): Opening => ({
  id: "o1",
  tag: "O1",
  containerId: idOf(1),
  face: "right",
  use: "passage",
  offsetUm: 2_000_000,
  sillUm: 200_000,
  widthUm: 3_000_000,
  heightUm: 2_000_000,
  framed: true,
  ...change,
});
const alone = sampleScheme(smallBuildings["one 40 ft high-cube"]);
const pair = sampleScheme(smallBuildings["two side by side"]); // unit-01 in the south, unit-02 in the north

describe("envelopes", () => {
  // 12.192 · 2.896 = 35.308, 2.438 · 2.896 = 7.0604, 12.192 · 2.438 = 29.724 m². Door opening 2.286 · 2.566 = 5.8659 m².
  it("of a plain unit have its five faces and its own end doors", () => {
    const [envelope] = envelopes(framed(alone), alone);
    expect(envelope?.sides.map(({ grossM2 }) => grossM2)).toEqual(
      [7.0604, 7.0604, 35.308, 35.308].map((area) => expect.closeTo(area, 2)),
    );
    expect(envelope?.sides.map(({ doorsM2 }) => doorsM2)).toEqual([expect.closeTo(5.8659, 3), 0, 0, 0]);
    expect(envelope?.roof.grossM2).toBeCloseTo(29.724, 2);
  });

  it("take a window drawn in the door end for the doors it replaces", () => {
    const glazed = {
      ...alone,
      openings: [opening({ face: "door", use: "window", widthUm: 2_000_000, offsetUm: 200_000 })],
    };
    expect(envelopes(framed(glazed), glazed)[0]?.sides.every(({ doorsM2 }) => doorsM2 === 0)).toBe(true);
  });

  it("count passages as open, doors as doors and windows as neither", () => {
    const south = (use: Opening["use"]) =>
      envelopes(framed(alone), { ...alone, openings: [opening({ use })] })[0]?.sides.find(({ side }) => side === "-y");
    expect(south("passage")).toMatchObject({ openM2: expect.closeTo(6, 9), doorsM2: 0 });
    expect(south("door")).toMatchObject({ openM2: 0, doorsM2: expect.closeTo(6, 9) });
    expect(south("window")).toMatchObject({ openM2: 0, doorsM2: 0 });
  });

  it("do not count what opens to a neighbour", () => {
    const between = { ...pair, openings: [opening({ face: "left" })] };
    const [envelope, none] = envelopes(framed(between), between);
    expect(none).toBeUndefined();
    expect(envelope?.sides.every(({ openM2 }) => openM2 === 0)).toBe(true);
  });

  it("turn with the unit: the right side of a unit turned by 90° looks east", () => {
    const turned = sampleScheme([{ type: "1AAA", xMm: 0, yMm: 0, zMm: 0, turn: 90 }], { openings: [opening({})] });
    const [envelope] = envelopes(framed(turned), turned);
    expect(envelope?.sides.find(({ openM2 }) => openM2 > 0)).toMatchObject({
      side: "+x",
      openM2: expect.closeTo(6, 9),
    });
  });
});

describe("compartments", () => {
  const groups = (openings: Opening[]) =>
    compartments(framed(pair), { ...pair, openings }).map((units) => units.map(({ id }) => id));

  it("are one unit each until a passage or a door joins them", () => {
    expect(groups([])).toEqual([[idOf(1)], [idOf(2)]]);
    expect(groups([opening({ face: "left" })])).toEqual([[idOf(1), idOf(2)]]);
    expect(groups([opening({ face: "left", use: "door" })])).toEqual([[idOf(1), idOf(2)]]);
    expect(groups([opening({ face: "left", use: "window" })])).toEqual([[idOf(1)], [idOf(2)]]);
    expect(groups([opening({ face: "right" })])).toEqual([[idOf(1)], [idOf(2)]]);
  });

  it("stay apart where a gap of 500 mm lies between", () => {
    const apart = sampleScheme([
      { type: "1AAA", xMm: 0, yMm: 0, zMm: 0 },
      { type: "1AAA", xMm: 0, yMm: 2938, zMm: 0 },
    ]);
    expect(compartments(framed(apart), { ...apart, openings: [opening({ face: "left" })] })).toHaveLength(2);
  });

  it("join through a roof hatch into the unit above", () => {
    const stacked = sampleScheme(smallBuildings["two 20 ft stacked"]);
    const hatch = opening({ face: "roof", use: "hatch", widthUm: 1_000_000, heightUm: 1_000_000 });
    expect(compartments(framed(stacked), { ...stacked, openings: [hatch] })).toHaveLength(1);
  });
});

describe("skinPressures", () => {
  const scheme = { ...alone, openings: [opening({ use: "window", sillUm: 900_000, heightUm: 1_200_000 })] };
  const parts = skinPressures(framed(scheme), scheme, basis, sampleHazards(), 0.18);

  it("cover every wall and the roof, and jambs, header and glazing of a window", () => {
    expect(parts.map(({ part }) => part)).toEqual([
      "wall sheet",
      "wall sheet",
      "wall sheet",
      "wall sheet",
      "jamb",
      "header",
      "glazing",
      "roof sheet",
    ]);
  });

  // jamb: sheet 2896 − 12.5 − 162 − 6 − 60 = 2655.5 mm high, half of 3 m wide: 3.983 m² (> a third of the span); header 3.0 · max(0.6, 1.0) = 3.0 m²; glazing 1.2 · 3.0 = 3.6 m²
  it("take span times width, at least a third of the span", () => {
    const area = (part: string) => parts.find((one) => one.part === part)?.cladding.effectiveAreaM2;
    expect(area("jamb")).toBeCloseTo(3.983, 2);
    expect(area("header")).toBeCloseTo(3, 9);
    expect(area("glazing")).toBeCloseTo(3.6, 9);
  });

  // a single unit is within every strip: walls reach to the edges, the roof is all corner
  it("take the worst zone the face touches", () => {
    expect(new Set(parts.map(({ cladding }) => cladding.zone))).toEqual(new Set(["edge", "corner"]));
  });

  it("cover the underside of an overhang", () => {
    const over = sampleScheme(smallBuildings["an overhang of 3 m"]);
    expect(
      skinPressures(framed(over), over, basis, sampleHazards(), 0.18).filter(({ part }) => part === "underside"),
    ).toHaveLength(1);
  });
});
