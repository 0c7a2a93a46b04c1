import { assess } from "@cornerway/engine";
import type { Override } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { factsOf } from "../../../../tests/support/marks-of.ts";
import { padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";
import { findSection } from "../../src/catalog/sections/find-section.ts";

const g1 = { id: "g1", type: "1CC", x: 0, y: 0 } as const;
const base = { units: [g1], pads: [...padsUnder(g1), { id: "b9", x: 9000, y: 0 }] };
const post = { id: "p1", x: 9000, y: 0, foot: 0, head: 3000 };
const window = { id: "d1", in: "g1", face: "left", at: 2000, sill: 900, width: 1500, height: 1000 } as const;
const source = "survey of the test";

describe("a section", () => {
  it("is found by its inch name and, as a tube, by its sizes in millimetres: 4 in = 101.6, 1/4 in = 6.35", () => {
    const names = ["HSS4x4x1/4", "HSS 4x4x1/4", "hss4×4×1/4", "HSS 102×102×6.4", "HSS102x102x6.4"];
    expect(names.map((name) => findSection(name)?.name)).toEqual(names.map(() => "HSS4x4x1/4"));
    expect(findSection("HSS 152x152x9.5")?.name).toBe("HSS6x6x3/8");
    expect(findSection("HSS 203x102x6.4")?.name).toBe("HSS8x4x1/4");
    expect(findSection("W99x1")).toBeUndefined();
  });

  it("that the catalogue does not have is told with the place that names it", () => {
    const framing = { jamb: "HSS4x4x1/4", header: "HSS9x9x9", sill: "HSS4x2x1/4" };
    const scheme = schemeOf({
      ...base,
      posts: [{ ...post, section: "TUBE 1" }],
      cuts: [{ ...window, framing }],
      beams: [{ id: "m1", from: [0, -3000, 5000], to: [0, 3000, 5000], section: "BEAM 2" }],
      found: [{ id: "v1", elementId: "g1", member: "top side rail", section: "RAIL 3", source }],
    });
    const told = factsOf(assess(scheme), "section-unknown").map(({ part, name, elements }) => [
      part,
      name,
      elements[0],
    ]);
    expect(told.toSorted()).toEqual([
      ["beam", "BEAM 2", "m1"],
      ["header", "HSS9x9x9", "d1"],
      ["override", "RAIL 3", "g1"],
      ["post", "TUBE 1", "p1"],
    ]);
  });
});

describe("what was found of a member", () => {
  const misfits = (found: readonly Override[]) =>
    factsOf(assess(schemeOf({ ...base, posts: [post], found })), "override-misfits").map(({ why, elements }) => [
      why,
      elements[0],
    ]);

  it("names a part of a container, and none of a post", () => {
    expect(misfits([{ id: "v1", elementId: "g1", member: "corner post", yieldMpa: 300, source }])).toEqual([]);
    expect(misfits([{ id: "v1", elementId: "p1", yieldMpa: 300, source }])).toEqual([]);
    expect(misfits([{ id: "v1", elementId: "g1", yieldMpa: 300, source }])).toEqual([["names no part", "g1"]]);
    expect(misfits([{ id: "v1", elementId: "p1", member: "corner post", yieldMpa: 300, source }])).toEqual([
      ["has no such part", "p1"],
    ]);
  });

  it("is said once of each member", () => {
    const one = { id: "v1", elementId: "g1", member: "corner post", yieldMpa: 300, source } as const;
    expect(misfits([one, { ...one, id: "v2", member: "cross member" }])).toEqual([]);
    expect(misfits([one, { ...one, id: "v2", yieldMpa: 235 }])).toEqual([["said twice", "g1"]]);
  });
});

describe("an opening", () => {
  it("says when it is cut: in the yard unless drawn after placing or after shoring", () => {
    const stage = (cut?: "after placing" | "after shoring") =>
      factsOf(
        assess(schemeOf({ ...base, cuts: [{ ...window, ...(cut === undefined ? {} : { cut }) }] })),
        "opening-in-sheet",
      ).map((fact) => fact.cut);
    expect(stage()).toEqual(["in the yard"]);
    expect(stage("after placing")).toEqual(["after placing"]);
    expect(stage("after shoring")).toEqual(["after shoring"]);
    const wall = { ...window, use: "open-wall", cut: "after shoring" } as const;
    expect(factsOf(assess(schemeOf({ ...base, cuts: [wall] })), "wall-out").map((fact) => fact.cut)).toEqual([
      "after shoring",
    ]);
  });
});
