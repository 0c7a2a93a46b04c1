import { describe, expect, it } from "vitest";
import { withKnownElements } from "../../src/geometry/known-elements.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";

const drawn = drawnUnit({
  type: "1CC",
  above: 1,
  openings: [
    { face: "right", framed: true, fromMm: 1500, widthMm: 1200 },
    { face: "left", framed: true, fromMm: 1500, widthMm: 1200 },
  ],
});
const before = withKnownElements(drawn);

describe("a scheme that comes as a copy after an edit", () => {
  it("says what was drawn, of the objects of the scheme before it where nothing is another", () => {
    const copy = withKnownElements(structuredClone(drawn));
    expect(copy).toEqual(drawn);
    expect(copy.containers).toBe(before.containers);
    expect(copy.openings).toBe(before.openings);
    expect(copy.basis).toBe(before.basis);
  });

  it("has the element that was edited as it is now, and the others as they were", () => {
    const edited = structuredClone(drawn);
    const [first] = edited.openings;
    if (first === undefined) throw new Error("the sample has openings");
    first.offsetUm += 10_000;
    const known = withKnownElements(edited);
    expect(known).toEqual(edited);
    expect(known.openings).not.toBe(before.openings);
    expect(known.openings[0]).not.toBe(before.openings[0]);
    expect(known.openings[1]).toBe(before.openings[1]);
    expect(known.containers).toBe(before.containers);
  });
});
