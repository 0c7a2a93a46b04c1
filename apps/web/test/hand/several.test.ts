import { applyOperations, type Operation, type Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { carried } from "../../src/hand/carried.ts";
import { moveElement, moveGroup } from "../../src/hand/move-element.ts";
import { press, type Press } from "../../src/hand/press.ts";
import { withinBand } from "../../src/hand/within-band.ts";
import { resizeOpening } from "../../src/tools/resize-opening.ts";
import { furnished, opening } from "../support/furnished.ts";
import { schemeOf, unitAt } from "../support/schemes.ts";

const at = (xMm: number, yMm: number, zMm: number) => ({ xMm, yMm, zMm });
const pressed = (given: Partial<Press>) =>
  press({
    scheme: furnished,
    assessment: null,
    tool: null,
    held: null,
    picked: null,
    chosenIds: [],
    at: at(0, 0, 0),
    projection: "plan",
    reachMm: 100,
    ...given,
  });
const picked = { id: "g1", kind: "container", at: at(0, 0, 0) } as const;

describe("press(given) without a tool", () => {
  it("takes a thing into the choice with Shift, and begins a band on bare paper", () => {
    expect(pressed({ picked, also: true })).toEqual({ kind: "also", id: "g1" });
    expect(pressed({})).toMatchObject({ kind: "hold", held: { kind: "band", also: false } });
  });

  it("takes hold of all that is chosen by one of them, and of one thing alone otherwise", () => {
    expect(pressed({ picked, chosenIds: ["g1", "g2"] })).toMatchObject({ held: { kind: "group", ids: ["g1", "g2"] } });
    expect(pressed({ picked, chosenIds: ["g2", "f1"] })).toMatchObject({ held: { kind: "element", id: "g1" } });
  });

  it("takes hold of the edges whose handle was pressed", () => {
    const handle = { id: "o1", kind: "opening", at: at(0, 0, 0), edges: { along: 1, up: 0 } } as const;
    expect(pressed({ picked: handle })).toMatchObject({ held: { kind: "edges", edges: { along: 1, up: 0 } } });
  });

  it("draws a beam by two presses, its end at the height of its beginning", () => {
    const first = pressed({ held: { kind: "beam", from: null, operations: [] }, at: at(-3000, -8000, 2896) });
    if (first.kind !== "hold" || first.held.kind !== "beam") throw new Error("the first press begins a beam");
    const second = pressed({ held: first.held, at: at(3000, -8000, 0) });
    expect(second).toMatchObject({
      kind: "draw",
      operations: [{ beam: { from: { xUm: -3_000_000, zUm: 2_896_000 }, to: { xUm: 3_000_000, zUm: 2_896_000 } } }],
    });
    expect(pressed({ held: first.held, at: at(-3000, -8000, 0) }).kind).toBe("cannot");
  });
});

describe("withinBand(scheme, projection, from, to)", () => {
  it("holds what lies whole within it: the two units on the ground, not the one that reaches out", () => {
    const found = withinBand(furnished, "plan", { uMm: -7000, vMm: -1500 }, { uMm: 7000, vMm: 4000 });
    expect(found.toSorted()).toEqual(["g1", "g2"]);
  });

  it("holds the openings of a unit that itself reaches out", () => {
    // W1 runs from −6096 + 3000 = −3096 to −1096 along G1, 0.9 to 2.1 m up.
    expect(withinBand(furnished, "south", { uMm: -3200, vMm: 800 }, { uMm: -1000, vMm: 2200 })).toEqual(["o1"]);
  });
});

describe("moveGroup(scheme, held, projection, from, to, reach)", () => {
  it("moves all by the way of the one that was taken, on its grid, and never catches on what goes along", () => {
    const scheme = schemeOf([unitAt("g1", "G1", 0, 0, 0), unitAt("g2", "G2", 0, 2438, 0)]);
    const moved = after(
      scheme,
      moveGroup(scheme, { id: "g1", ids: ["g1", "g2"] }, "plan", at(0, 0, 0), at(3004, 0, 0), 500),
    );
    expect(moved.containers.map(({ xUm, yUm }) => [xUm, yUm])).toEqual([
      [3_000_000, 0],
      [3_000_000, 2_438_000],
    ]);
  });
});

describe("moveElement(…, places)", () => {
  it("catches a dragged unit on a place where its fittings land, though no single fitting draws it there", () => {
    const scheme = schemeOf([unitAt("g1", "G1", 0, 0, 0), unitAt("f1", "F1", 3000, 0, 2896)]);
    const places = [{ xUm: 1_500_000, yUm: 0 }];
    const moved = after(scheme, moveElement(scheme, "f1", "plan", at(0, 0, 0), at(-1460, 0, 0), 100, places));
    expect(moved.containers.find(({ id }) => id === "f1")?.xUm).toBe(1_500_000);
    const free = after(scheme, moveElement(scheme, "f1", "plan", at(0, 0, 0), at(-1460, 0, 0), 100));
    expect(free.containers.find(({ id }) => id === "f1")?.xUm).toBe(1_540_000);
  });

  it("moves a seat, a tie and a beam in whole steps of 10 mm", () => {
    const moved = after(furnished, moveElement(furnished, "s1", "plan", at(0, 0, 0), at(104, 0, 0), 0));
    expect(moved.seats[0]?.xUm).toBe(100_000);
    const raised = after(furnished, moveElement(furnished, "m1", "south", at(0, 0, 0), at(0, 0, 296), 0));
    expect(raised.beams[0]?.to.zUm).toBe(3_196_000);
  });
});

describe("resizeOpening(unit, opening, edges, to, reach)", () => {
  const unit = unitAt("g1", "G1", 0, 0, 0);

  it("draws the far edge and leaves the near one; a corner draws two", () => {
    const wider = resizeOpening(unit, opening, { along: 1, up: 0 }, { uMm: 5504, vMm: 0 }, 0);
    // From 3.000 to 5.500 m.
    expect(wider).toEqual([
      {
        kind: "opening.shape",
        id: "o1",
        offsetUm: 3_000_000,
        widthUm: 2_500_000,
        sillUm: 900_000,
        heightUm: 1_200_000,
      },
    ]);
    const corner = resizeOpening(unit, opening, { along: -1, up: 1 }, { uMm: 2500, vMm: 2000 }, 0);
    expect(corner).toMatchObject([{ offsetUm: 2_500_000, widthUm: 2_500_000, sillUm: 900_000, heightUm: 1_100_000 }]);
  });

  it("never turns an opening inside out, and is nothing where nothing moved", () => {
    const narrow = resizeOpening(unit, opening, { along: 1, up: 0 }, { uMm: 1000, vMm: 0 }, 0);
    expect(narrow).toMatchObject([{ offsetUm: 3_000_000, widthUm: 100_000 }]);
    expect(resizeOpening(unit, opening, { along: 1, up: 0 }, { uMm: 5000, vMm: 0 }, 0)).toEqual([]);
  });

  it("is what a held handle does as the pointer moves", () => {
    const held = { kind: "edges", id: "o1", edges: { along: 1, up: 0 }, operations: [] } as const;
    // A point 5.5 m from the front end of G1, whose front end lies at −6096 mm.
    const moved = carried(
      furnished,
      { ...held, operations: [] },
      {
        at: at(-596, -1219, 1500),
        projection: "south",
        reachMm: 0,
      },
    );
    expect(moved).toMatchObject({ operations: [{ widthUm: 2_500_000 }] });
  });
});

function after(scheme: Scheme, operations: readonly Operation[]): Scheme {
  const applied = applyOperations(scheme, operations);
  if (!applied.ok) throw new Error(JSON.stringify(applied.refusal));
  return applied.scheme;
}
