import { assess } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { bearingOf, factsOf, verdictOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

const a = { id: "a", type: "1AAA" as const, x: 0, y: 0 };
const b = { ...a, id: "b", z: 2896 };
const pads = padsUnder(a);

describe("a unit that does not touch what it is drawn to stand on", () => {
  it("on four pads 10 mm too low is not checked and told why", () => {
    const assessment = assess(schemeOf({ units: [{ ...a, z: 10 }], pads }));
    expect(verdictOf(assessment, "a")).toBe("not checked");
    expect(factsOf(assessment, "stands-clear")).toMatchObject([{ id: "stands-clear:a", gapMm: 10, places: 4 }]);
  });

  it("10 mm above four fittings takes no stock lock and is told why, and what it stands over is not as built", () => {
    const assessment = assess(schemeOf({ units: [a, { ...b, z: 2906 }], pads }));
    expect(bearingOf(assessment, "b:front-left")).toMatchObject({ on: "fitting", gapMm: 10, joint: "seat" });
    expect(factsOf(assessment, "stands-clear").map(({ id, elements }) => [id, elements])).toEqual([
      ["stands-clear:b", ["b", "a"]],
    ]);
    expect(verdictOf(assessment, "a")).toBe("not checked");
  });

  it("on its four pads and over a fifth, 12.5 mm under its rail (ISO 1496-1, from memory), is told of the fifth", () => {
    const assessment = assess(schemeOf({ units: [a], pads: [...pads, { id: "q", x: 0, y: 1190 }] }));
    expect(factsOf(assessment, "stands-clear")).toMatchObject([{ gapMm: 12.5, places: 1, elements: ["a", "q"] }]);
  });

  it("leaves no unit without a mark", () => {
    for (const z of [0, 1, 2, 3, 10, 24, 25, 26, 500]) {
      const assessment = assess(
        schemeOf({
          units: [
            { ...a, z },
            { ...b, z: 2896 + 2 * z },
          ],
          pads,
        }),
      );
      const named = new Set(assessment.marks.flatMap(({ elements }) => elements));
      expect([...named], `${z} mm`).toEqual(expect.arrayContaining(["a", "b"]));
    }
  });
});
