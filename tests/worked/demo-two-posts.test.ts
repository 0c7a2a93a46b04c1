import { assess, strength } from "@cornerway/engine";
import { applyOperations, Operation, readScheme, type Scheme } from "@cornerway/schema";
import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { z } from "zod";
import { bearingOf, factsOf, reactionOf, verdictOf } from "../support/marks-of.ts";

const read = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../shared/demo/${name}`, import.meta.url), "utf8"));

function demo(): Scheme {
  const reading = readScheme(read("scheme.json"));
  if (!reading.ok) throw new Error(JSON.stringify(reading.fields));
  return reading.scheme;
}

function withTwoPosts(): Scheme {
  const applied = applyOperations(demo(), z.array(Operation).parse(read("two-posts.json")));
  if (!applied.ok) throw new Error(JSON.stringify(applied.refusal));
  return applied.scheme;
}

// T1 (40 ft high cube, turned south) lies with its centre at y = −2133 mm. It bears in the north by its fittings on those of
// F4, y = −2133 + 5992.5 = 3859.5, and in the south where its bottom rails cross F1's south top rail, whose axis lies
// 30 mm inside F1's face at −1219: y = −1189. Its load comes down 2133 − 1189 = 944 mm outside that line.
// Load: tare 39.240 + 0.5 kPa + 1.92 kPa floor + 1.0 kPa roof on 12.192 × 2.438 = 29.724 m²: 39.240 + 3.42 × 29.724 =
// 140.896 kN, turning moment 140.896 × 0.944 = 133.006 kN m. As it begins to turn all of it is on the southern line.

it("T1 tips over to the south: its 140.9 kN come down 0.94 m outside F1's wall", () => {
  const assessment = assess(demo());
  expect(assessment.verdict).toBe("does not work");
  const [tips] = factsOf(assessment, "tips-over");
  expect(tips).toMatchObject({ elements: ["t1"], outsideMm: 944, towards: "south", verdict: "does not work" });
  expect(tips?.weightKn).toBeCloseTo(140.896, 3);
  expect(tips?.momentKnm).toBeCloseTo(133.006, 2);
  for (const name of ["front-left", "front-right"]) expect(bearingOf(assessment, `t1:${name}`)?.forceKn).toBe(0);
});

it("half of what T1 puts on F1 comes down over the door D3: 140.896/2 = 70.448 kN", () => {
  const [over] = factsOf(assess(demo()), "load-over-opening");
  expect(over).toMatchObject({ elements: ["d3", "f1", "t1"], railCut: false, verdict: "not checked" });
  expect(over?.forceKn).toBeCloseTo(70.448, 2);
});

it("two posts on pads under its south corners hold it: nothing tips, nothing comes down over D3", () => {
  const assessment = assess(withTwoPosts());
  expect(assessment.verdict).toBe("not checked");
  expect(factsOf(assessment, "tips-over")).toEqual([]);
  expect(factsOf(assessment, "load-over-opening")).toEqual([]);
  expect(verdictOf(assessment, "t1")).toBe("not checked");
});

it("T1 is then held at its four corners, a quarter of 140.896 = 35.224 kN on each; the posts take theirs to their pads", () => {
  const assessment = assess(withTwoPosts());
  expect(factsOf(assessment, "post-carries").map(({ forceKn, holds }) => [forceKn, holds])).toEqual([
    [35.224, ["t1"]],
    [35.224, ["t1"]],
  ]);
  expect(reactionOf(assessment, "b11")).toBeCloseTo(35.224, 3);
  expect(reactionOf(assessment, "b12")).toBeCloseTo(35.224, 3);
  expect(assessment.statics.residualKn).toBe(0);
});

it("a mark that both schemes have keeps its name, so that what was written about it stays with it", () => {
  const before = assess(demo()).marks.map(({ id }) => id);
  const after = new Set(assess(withTwoPosts()).marks.map(({ id }) => id));
  const gone = before.filter((id) => !after.has(id));
  expect(gone).toEqual(["tips-over:t1", "load-over-opening:d3+f1+t1", "borne-on-rail:t1"]);
});

it("the demo has what it is to show: an overhang, a turned unit, a wall out, a unit that works as built", () => {
  const assessment = assess(demo());
  expect(factsOf(assessment, "overhang").map(({ elements, lengthMm }) => [elements[0], lengthMm])).toEqual([
    ["f1", 3000],
  ]);
  expect(factsOf(assessment, "borne-on-rail").some(({ turned }) => turned)).toBe(true);
  expect(factsOf(assessment, "wall-out").map(({ elements }) => elements)).toEqual([["o1", "g3"]]);
  expect(assessment.units.filter(({ verdict }) => verdict === "works as built").map(({ id }) => id)).toEqual(["f4"]);
  expect(new Set(assessment.units.map(({ storey }) => storey))).toEqual(new Set([0, 1, 2]));
});

it("the small first stack works as built by its load path and its strength: three whole 20 ft units on pads", () => {
  const reading = readScheme(read("first-stack.json"));
  if (!reading.ok) throw new Error(JSON.stringify(reading.fields));
  const assessment = assess(reading.scheme);
  expect(assessment.units.map(({ id, verdict }) => [id, verdict])).toEqual([
    ["f1", "works as built"],
    ["g1", "works as built"],
    ["g2", "works as built"],
  ]);
  const answer = strength(reading.scheme);
  if (!answer.accepted) throw new Error("the first stack has no hazards to refuse");
  expect(answer.units.map(({ unitId, verdict }) => [unitId, verdict])).toEqual(
    assessment.units.map(({ id, verdict }) => [id, verdict]),
  );
});
