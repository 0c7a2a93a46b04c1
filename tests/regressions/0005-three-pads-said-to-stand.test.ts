import { assess } from "@cornerway/engine";
import { elementNames, markSentences } from "@cornerway/schema";
import { expect, it } from "vitest";
import { factsOf, reactionOf, verdictOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

// A unit on three pads out of four: its weight lies on the line between two opposite pads, so that these take half
// each (39.24 / 2 = 19.62 kN), the third takes nothing, and any load towards the free corner turns it over.
const unit = { id: "a", type: "1AAA" as const, x: 0, y: 0 };
const pads = padsUnder(unit).filter(({ x, y }) => !(x > 0 && y > 0));
const scheme = schemeOf({ units: [unit], pads, groundMm: -300 });
const assessment = assess(scheme);

it("a unit balanced on the line between two pads tips over the edge of its bearings", () => {
  expect(verdictOf(assessment, "a")).toBe("does not work");
  expect(factsOf(assessment, "tips-over")[0]).toMatchObject({ outsideMm: 0, momentKnm: 0 });
  expect(pads.map(({ id }) => reactionOf(assessment, id)).toSorted((a, b) => a - b)).toEqual([0, 19.62, 19.62]);
});

it("and is told to do so by balance, with no length of 0.00 m", () => {
  const mark = assessment.marks.find(({ fact }) => fact.kind === "tips-over");
  const body = mark === undefined ? "" : markSentences(mark, elementNames(scheme), "architect").body;
  expect(body).toMatch(/on the very edge of its bearings/);
  expect(body).not.toMatch(/0\.00 m/);
});

it("a unit on four pads is nowhere near the edge", () => {
  expect(verdictOf(assess(schemeOf({ units: [unit], pads: padsUnder(unit) })), "a")).toBe("works as built");
});
