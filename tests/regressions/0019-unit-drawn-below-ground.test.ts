import { assess } from "@cornerway/engine";
import { elementNames, markSentences } from "@cornerway/schema";
import { expect, it } from "vitest";
import { bearingOf, factsOf, reactionOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

const g = { id: "g", type: "1AAA" as const, x: 0, y: 0, z: -800 };
const onPads = schemeOf({ units: [g], pads: padsUnder(g, -800) });
const bare = assess(schemeOf({ units: [g] }));

it("a unit on pads 800 mm below the ground level of the site is told to lie there, and does not work as built", () => {
  expect(assess(onPads).marks).toMatchObject([
    { id: "below-ground:g", verdict: "not checked", fact: { kind: "below-ground", depthMm: 800 } },
  ]);
  const [mark] = assess(onPads).marks;
  expect(mark === undefined ? "" : markSentences(mark, elementNames(onPads), "architect").body).toBe(
    "U1 lies 800 mm below the ground level of the site. What the ground does to its walls is not judged.",
  );
});

// Tare of a 40 ft high cube 39.240 kN as in the worked demo, a quarter on each corner.
it("without pads it stands on the bottom of its pit: pads are missing, it does not fall", () => {
  expect(factsOf(bare, "mechanism")).toEqual([]);
  expect(factsOf(bare, "pad-missing")).toMatchObject([{ corners: 4, verdict: "not checked" }]);
  expect(bearingOf(bare, "g:front-left")).toMatchObject({ on: "ground", gapMm: 0 });
  expect(reactionOf(bare, "g")).toBeCloseTo(39.24, 2);
});

it("at ground level no such thing is said, and above it without pads it still falls", () => {
  const at = (z: number) => assess(schemeOf({ units: [{ ...g, z }] }));
  expect(factsOf(at(0), "below-ground")).toEqual([]);
  expect(factsOf(at(0), "pad-missing")).toHaveLength(1);
  expect(factsOf(at(300), "mechanism")).toMatchObject([{ direction: "falls" }]);
});

// u overhangs what it stands on by 3 m, both in a pit: no bottom of the pit is drawn at its own height there.
it("a corner that hangs past the unit below it is not taken to stand on earth", () => {
  const u = { ...g, id: "u", x: 3000, z: -800 };
  const low = { ...g, z: -800 - 2896 };
  const assessment = assess(schemeOf({ units: [low, u], pads: padsUnder(low, -800 - 2896) }));
  expect(bearingOf(assessment, "u:door-left")?.on).toBe("air");
});
