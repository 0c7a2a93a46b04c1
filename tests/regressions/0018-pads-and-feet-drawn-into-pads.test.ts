import { assess } from "@cornerway/engine";
import { expect, it } from "vitest";
import { factsOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

const g = { id: "g", type: "1CC" as const, x: 0, y: 0 };
const drawn = (parts: Omit<Parameters<typeof schemeOf>[0], "units">) => assess(schemeOf({ units: [g], ...parts }));
const pads = padsUnder(g);

// Pads are 600 × 600 × 600 mm. Two whose centres are 500 mm apart share 100 mm; at 600 mm they touch.
const beside = (apart: number) => [...pads, { id: "q", x: -2926.5 - apart, y: -1129.5 }];

it("two pads 600 mm wide and 500 mm apart are drawn 100 mm into each other", () => {
  expect(factsOf(drawn({ pads: beside(500) }), "collision")).toMatchObject([
    { id: "collision:g-pad-0+q", depthMm: 100, verdict: "does not work" },
  ]);
});

it("pads that touch, and a pad that stands on another, share no place", () => {
  expect(factsOf(drawn({ pads: beside(600) }), "collision")).toEqual([]);
  const stacked = [...pads, ...pads.map((pad) => ({ ...pad, id: `${pad.id}-low`, top: -600 }))];
  expect(factsOf(drawn({ pads: stacked }), "collision")).toEqual([]);
});

// A post 102 mm square on its own pad, its foot 50 mm below the top of it.
const post = (foot: number) =>
  drawn({
    pads: [...pads, { id: "q", x: 6000, y: 0 }],
    posts: [{ id: "p", x: 6000, y: 0, foot, head: 2591 }],
  });

it("a post whose foot is drawn 50 mm into its pad shares a place with it, and that is all said of its foot", () => {
  expect(factsOf(post(-50), "collision")).toMatchObject([
    { id: "collision:p+q", depthMm: 50, elements: ["p", "q"], verdict: "does not work" },
  ]);
  expect(factsOf(post(-50), "post-without-ground")).toEqual([]);
});

it("a post that stands on its pad does not", () => {
  expect(factsOf(post(0), "collision")).toEqual([]);
});
