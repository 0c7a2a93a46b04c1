import { assess } from "@cornerway/engine";
import { elementNames, markSentences } from "@cornerway/schema";
import { expect, it } from "vitest";
import { factsOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

// A 40 ft side is 12 192 mm long. An open wall from 2000 to 9000 mm takes 7000/12 192 = 57.4 % of it and a window of 1500
// from 10 000 on makes 8500/12 192 = 69.7 %; between them 1000 mm are left and at the end 692 mm, both under 4 ft = 1219 mm
// (50 % and 4 ft: IBC 2021 3115.8.5.3, from memory).
const g = { id: "g", type: "1AAA" as const, x: 0, y: 0 };
const wall = {
  id: "d1",
  in: "g",
  face: "left",
  use: "open-wall",
  at: 2000,
  sill: 300,
  width: 7000,
  height: 2300,
} as const;
const scheme = schemeOf({
  units: [g],
  pads: padsUnder(g),
  cuts: [wall, { ...wall, id: "d2", use: "window", at: 10_000, width: 1500, sill: 900, height: 1000 }],
});

it("a wall taken out is held against the 50 % and the 4 ft like any other opening of that wall", () => {
  const [out] = factsOf(assess(scheme), "wall-out");
  expect(out?.wall?.wallRule).toBe("more than half cut and pier under 4 ft");
  expect(out?.wall?.cutShare).toBeCloseTo(8500 / 12_192, 3);
  expect(out?.wall?.shortestPierMm).toBeCloseTo(692, 3);
});

it("both readers of figures are told them", () => {
  const mark = assess(scheme).marks.find(({ fact }) => fact.kind === "wall-out");
  if (mark === undefined) throw new Error("no wall out");
  const said = (reader: "architect" | "engineer") => markSentences(mark, elementNames(scheme), reader);
  expect(said("architect").detail).toBe(
    "Openings take 70 % of that wall, more than half, and a piece of 0.69 m is too short to count.",
  );
  expect(said("engineer").body).toContain("70 % of the wall cut (limit 50 %), shortest piece 0.69 m");
});
