import type { Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { buildingOf } from "../../src/geometry/building.ts";
import type { UsedPart } from "../../src/remedies/known-parts.ts";
import { openingsAt } from "../../src/remedies/openings-at.ts";
import { narrowerOpeningsToo } from "../../src/remedies/repairs/narrower-openings-too.ts";
import type { Trial } from "../../src/remedies/trial.ts";
import { padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";
import { drawn } from "./listed.ts";

// A 20 ft unit: from its end to the middle of its corner post are (6058 − 5853)/2 = 102.5 mm (ISO 668), from where places count.
const unit = { id: "g", type: "1CCC" as const, x: 0, y: 0 };
const above = { id: "t", type: "1CCC" as const, x: 1000, y: 0, z: 2896 };
const door = { id: "d", in: "g", face: "right" as const, use: "door" as const, at: 2000, sill: 180, width: 2000 };
const out = { id: "o", in: "g", face: "left" as const, use: "open-wall" as const, at: 300, sill: 180, width: 5400 };
const scheme = schemeOf({
  units: [unit, above],
  pads: padsUnder(unit),
  cuts: [
    { ...door, height: 2200 },
    { ...out, height: 2500 },
  ],
});

const namedBy = (...places: string[]): string[] => {
  const found = buildingOf(scheme).unitById.get("g");
  if (found === undefined) throw new Error("g is drawn");
  return openingsAt(scheme, found, places).map(({ id }) => id);
};

describe("the openings a part's place names", () => {
  // the door runs from 2000 − 102.5 = 1897.5 to 3897.5 mm
  it("are those its stretch of rail lies below", () => {
    expect(namedBy("right over 1.90–3.90 m")).toEqual(["d"]);
    expect(namedBy("right over 1.90–3.90 m, lifted")).toEqual(["d"]);
  });

  it("are those out from post to post, whose stretch begins before them", () => {
    expect(namedBy("left over 0.00–5.85 m")).toEqual(["o"]);
  });

  it("are none for the stretch beside one, another wall, or a rail along its whole length", () => {
    expect(namedBy("right over 0.00–1.90 m")).toEqual([]);
    expect(namedBy("front over 0.20–2.00 m")).toEqual([]);
    expect(namedBy("right")).toEqual([]);
  });

  it("are those whose jamb is named", () => {
    expect(namedBy("right at 1.90 m, ends of the stated weld")).toEqual(["d"]);
  });
});

describe("a change that leaves the mark as it is by an opening", () => {
  const part = (place: string, use: number): UsedPart => ({
    ...{ id: `g bottom side rail ${place}`, ownerId: "g", element: "bottom side rail", place, use },
  });
  const landing: Trial = {
    change: {
      ...{ kind: "land on fittings", unitId: "t", byMm: 1000, towards: "west", landings: 4, gap: null },
    },
    operations: scheme.containers
      .filter(({ id }) => id === "t")
      .map((container) => ({ kind: "container.change", container: { ...container, xUm: 0 } })),
  };
  const mended = (trial: Trial, ...unsettled: UsedPart[]): Trial | undefined =>
    narrowerOpeningsToo(trial, {
      ...{ scheme, tried: drawn(scheme, trial.operations), parts: unsettled, unsettled },
      ...{ holds: [], wouldDo: new Map() },
    });
  const doorIn = ({ openings }: Scheme) => openings.find(({ id }) => id === "d");

  // 2000/1.148 = 1742, to whole 50 mm 1700, and one step less: 1650; about its middle at 3000
  it("has it narrower by as much as its rail is beyond its strength, about its middle", () => {
    const next = mended(landing, part("right over 1.90–3.90 m", 1.148));
    expect(next?.change).toEqual(landing.change);
    expect(next?.also).toEqual([
      { kind: "narrow opening", openingId: "d", fromMm: 2000, toMm: 1650, from: "both sides" },
    ]);
    const after = drawn(scheme, next?.operations ?? []);
    expect(doorIn(after)).toMatchObject({ offsetUm: 2_175_000, widthUm: 1_650_000 });
    expect(after.containers.find(({ id }) => id === "t")?.xUm).toBe(0);
  });

  // then 1650/1.09 = 1514, to whole 50 mm 1500, one step less: 1450
  it("has it narrower again where that is not enough, told as one from what is drawn", () => {
    const once = mended(landing, part("right over 1.90–3.90 m", 1.148));
    const twice = once && mended(once, part("right over 2.07–3.72 m", 1.09));
    expect(twice?.also).toEqual([
      { kind: "narrow opening", openingId: "d", fromMm: 2000, toMm: 1450, from: "both sides" },
    ]);
    expect(twice?.operations.filter(({ kind }) => kind === "opening.shape")).toHaveLength(1);
  });

  // 1400/1.02 = 1372, to whole 50 mm 1350, one step less 1300; the door that is moved is left as wide as it is
  it("has another one narrower beside an opening that is moved along", () => {
    const two = schemeOf({
      units: [unit],
      pads: padsUnder(unit),
      cuts: [
        { ...door, at: 800, width: 900, height: 2200 },
        { ...door, id: "e", at: 3500, width: 1400, height: 2200 },
      ],
    });
    const moved: Trial = {
      change: { kind: "move opening", openingId: "d", byMm: 650, towards: "east" },
      operations: [{ kind: "opening.shape", id: "d", offsetUm: 1.45e6, sillUm: 1.8e5, widthUm: 9e5, heightUm: 2.2e6 }],
    };
    // places count from the middle of the corner post: 3500 − 102.5 = 3397.5
    const next = narrowerOpeningsToo(moved, {
      ...{ scheme: two, tried: drawn(two, moved.operations), parts: [], holds: [], wouldDo: new Map() },
      unsettled: [part("right over 3.40–4.80 m", 1.02), part("right over 1.35–2.25 m", 1.02)],
    });
    expect(next?.also).toEqual([
      { kind: "narrow opening", openingId: "e", fromMm: 1400, toMm: 1300, from: "both sides" },
    ]);
    const widths = drawn(two, next?.operations ?? []).openings.map(({ id, offsetUm, widthUm }) => [
      id,
      offsetUm,
      widthUm,
    ]);
    expect(widths).toEqual([
      ["d", 1_450_000, 900_000],
      ["e", 3_550_000, 1_300_000],
    ]);
  });

  it("is left alone where a door would be too narrow to pass, and where a wall is out", () => {
    expect(mended(landing, part("right over 1.90–3.90 m", 2.2))).toBeUndefined();
    expect(mended(landing, part("left over 0.00–5.85 m", 1.2))).toBeUndefined();
  });

  it("is left alone where the change is that opening's own", () => {
    const own: Trial = {
      change: { kind: "move opening", openingId: "d", byMm: 300, towards: "west" },
      operations: [{ kind: "opening.shape", id: "d", offsetUm: 1.7e6, sillUm: 1.8e5, widthUm: 2e6, heightUm: 2.2e6 }],
    };
    expect(mended(own, part("right over 1.60–3.60 m", 1.148))).toBeUndefined();
  });
});
