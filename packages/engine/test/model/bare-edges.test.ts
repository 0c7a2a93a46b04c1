import type { Opening } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { actingCut, BARE_EDGE_MM, bareEdgeSaid, endingAtFrames, hasBareEdge } from "../../src/model/bare-edges.ts";
import { strength } from "../../src/strength.ts";
import { referenceJson } from "../analysis/reference-model.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";
import { solveWall, wallCases } from "./support/wall-cases.ts";

const LENGTH_MM = 11_985;

const cutOf = (
  opening: Pick<Opening, "id" | "use" | "framed" | "offsetUm" | "sillUm" | "widthUm" | "heightUm">,
): Opening => ({
  ...opening,
  tag: opening.id,
  containerId: "u1",
  face: "right",
});

describe("a cut that is not framed", () => {
  // 90 mm: derived from a fold-by-fold model with real rails; walls.test.ts holds the mesh with it against shared/reference/walls.json
  it("acts 90 mm wider at each bare edge", () => {
    expect(actingCut({ u0: 4000, u1: 6000 }, LENGTH_MM)).toEqual({ u0: 3910, u1: 6090 });
  });

  it("acts up to the post where less than 90 mm of sheet is left beside it", () => {
    expect(actingCut({ u0: 60, u1: 2000 }, LENGTH_MM)).toEqual({ u0: 0, u1: 2090 });
    expect(actingCut({ u0: 0, u1: LENGTH_MM }, LENGTH_MM)).toEqual({ u0: 0, u1: LENGTH_MM });
  });

  it("has no bare edge where it is framed or goes from post to post", () => {
    expect(hasBareEdge({ framed: false, u0: 0, u1: 2000 }, LENGTH_MM)).toBe(true);
    expect(hasBareEdge({ framed: true, u0: 0, u1: 2000 }, LENGTH_MM)).toBe(false);
    expect(hasBareEdge({ framed: false, u0: 0, u1: LENGTH_MM }, LENGTH_MM)).toBe(false);
  });
});

describe("a 20 ft unit with a hole that is not framed", () => {
  const hole = (widthMm: number) =>
    strength(
      drawnUnit({
        type: "1CC",
        openings: [{ face: "right", framed: false, fromMm: 3029 - widthMm / 2, widthMm }],
        imposedPa: 1900,
      }),
    );
  const answerOf = (widthMm: number) => {
    const answer = hole(widthMm);
    if (!answer.accepted) throw new Error("it is accepted");
    return answer;
  };
  const [small, large] = [answerOf(600), answerOf(4000)];

  it("works as built where numbers say so, and does not where they do not", () => {
    expect(small.units.map(({ verdict }) => verdict)).toEqual(["works as built"]);
    expect(large.units.map(({ verdict }) => verdict)).not.toContain("works as built");
  });

  it("says in the workings of the rails across it and of the sheet beside it what they rest on", () => {
    const said = small.results.flatMap(({ element, place, working }) =>
      working?.notes.includes(bareEdgeSaid) === true ? [`${element} ${place}`] : [],
    );
    // post axes are 5853 mm apart: 2926.5 ± 300 ± 90
    expect([...said].toSorted()).toEqual(
      expect.arrayContaining([
        "bottom side rail right over 2.54–3.32 m",
        "top side rail right over 2.54–3.32 m",
        "side sheet right 0.00–2.54 m",
        "side sheet right 3.32–5.85 m",
      ]),
    );
    expect(said.some((part) => part.includes("left"))).toBe(false);
    expect(BARE_EDGE_MM).toBe(90);
  });
});

describe("cuts of a wall as they act", () => {
  const bare = { wall: "right", framed: false, u0: 1410, u1: 3086 }; // 1500 to 2996 as drawn

  it("end at the jamb of a frame that is nearer than 90 mm, and at no other", () => {
    const window = { wall: "right", framed: true, u0: 3000, u1: 3900 };
    expect(endingAtFrames([bare, window])).toEqual([{ ...bare, u1: 3000 }, window]);
    expect(endingAtFrames([bare, { ...window, wall: "left" }])[0]).toEqual(bare);
    expect(endingAtFrames([bare, { ...window, u0: 3100 }])[0]).toEqual(bare);
    expect(endingAtFrames([bare, { ...window, u0: 500, u1: 1450 }])[0]).toEqual({ ...bare, u0: 1450 });
  });
});

describe("a bare cut that ends at the frame of a window", () => {
  // Were the cut to act past the window's jamb, above and below the frame there would be no sheet on either side of the jamb, and
  // by statics the frame would turn about its other jamb, held by nothing.
  it("leaves a unit that is solved: no run is refused", () => {
    const answer = strength({
      ...drawnUnit({ type: "1CC", openings: [{ face: "right", framed: false, fromMm: 1500, widthMm: 1496 }] }),
      openings: [
        cutOf({
          id: "bare",
          use: "passage",
          framed: false,
          offsetUm: 1_500_000,
          sillUm: 180_000,
          widthUm: 1_496_000,
          heightUm: 2_000_000,
        }),
        cutOf({
          id: "window",
          use: "window",
          framed: true,
          offsetUm: 3_000_000,
          sillUm: 1_000_000,
          widthUm: 900_000,
          heightUm: 900_000,
        }),
      ],
    });
    if (!answer.accepted) throw new Error("it is accepted");
    expect(answer.refusedRuns).toEqual([]);
    expect(answer.results.some(({ element }) => element === "jamb")).toBe(true);
  });
});

// Source: shared/reference/walls.json, a sheet modelled fold by fold, which asks for rail moments within 10 %.
describe("the width a bare edge is taken as wider", () => {
  const file = referenceJson<{ cases: { name: string; values: { what: string; explicit: number }[] }[] }>("walls.json");
  /** Moment of a rail over its explicit one, less one, where the cut stands so many mm wider at each edge. */
  const off = (name: string, what: string, widerMm: number): number => {
    const wall = wallCases.find((one) => one.name === name);
    const explicit = file.cases.find((one) => one.name === name)?.values.find((one) => one.what === what)?.explicit;
    if (wall?.cut === undefined || explicit === undefined) throw new Error(`no ${what} of ${name}`);
    const width = wall.cut.width - 2 * BARE_EDGE_MM + 2 * widerMm;
    return Number(solveWall({ ...wall, cut: { ...wall.cut, width } })[what]) / explicit - 1;
  };
  const narrow = (mm: number) => off("open 2.0 m centred, no frame", "top rail, largest moment", mm);
  const wide = (mm: number) => off("open 4.5 m centred, no frame", "bottom rail, largest moment", mm);

  it("cannot be within 10 % at the top of a narrow cut and never short at the bottom of a wide one: it is on the safe side", () => {
    for (let mm = 0; mm <= 120; mm += 15) expect(narrow(mm) > 0.1 || wide(mm) < 0, `${mm} mm`).toBe(true);
    expect(wide(BARE_EDGE_MM)).toBeGreaterThan(0);
    expect(narrow(BARE_EDGE_MM)).toBeLessThan(0.25);
  });
});
