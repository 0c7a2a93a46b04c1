import { elevationModel, isometricModel } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { tagSpots } from "../../src/drawing/elevation/elevation-labels.ts";
import { elevationAnchor } from "../../src/drawing/leaders/elevation-anchor.ts";
import { isometricAnchor } from "../../src/drawing/leaders/isometric-anchor.ts";
import { fromScreen } from "../../src/drawing/view-transform.ts";
import { hexagonHalfPx } from "../../src/look/hexagon-size.ts";
import { demoScheme } from "../support/demo-scheme.ts";

const view = { originXPx: 0, originYPx: 0, pxPerM: 1000 };
const small = { originXPx: 200, originYPx: 500, pxPerM: 50 };
const south = elevationModel(demoScheme, "south");
const at = (xMm: number, yMm: number, zMm: number) => ({ xMm, yMm, zMm });

describe("the end of a leader on an elevation", () => {
  it("is the right edge of an opening, off the tag in its middle", () => {
    const door = demoScheme.openings.find(({ id }) => id === "d3");
    const unit = demoScheme.containers.find(({ id }) => id === "f1");
    const east = (unit?.xUm ?? 0) / 1000 - 6096 + ((door?.offsetUm ?? 0) + (door?.widthUm ?? 0)) / 1000;
    expect(elevationAnchor({ elementId: "d3", at: at(0, 0, 0) }, south, view)).toMatchObject({ xPx: east, end: "dot" });
  });

  it("is the bearing itself when a load comes down away from the unit's corners", () => {
    const found = elevationAnchor({ elementId: "f1", at: at(8000, -1219, 5792) }, south, view);
    expect(found).toEqual({ xPx: 8008, yPx: -5789, end: "dot" });
  });

  it("is on the unit's own face by the corner that what is said concerns", () => {
    const west = elevationAnchor({ elementId: "f1", at: at(3103, -1130, 2896) }, south, view);
    const east = elevationAnchor({ elementId: "f1", at: at(15_088, -1130, 2896) }, south, view);
    expect(west?.xPx).toBeLessThan(3500);
    expect(east?.xPx).toBeGreaterThan(14_700);
    expect(west?.yPx).toBeLessThan(-2896);
  });

  it("is where the place lies along the unit, though what bears it is on the far side", () => {
    const found = elevationAnchor({ elementId: "f1", at: at(12_088, 1195, 2908) }, south, view);
    expect(found).toEqual({ xPx: 12_088, yPx: -(2896 + 150), end: "dot", upwards: true });
  });

  it("is beside the tag of an opening that is in the middle of what is spoken of", () => {
    const [tag] = tagSpots(south, small).filter(({ id }) => id === "d3");
    if (tag === undefined) throw new Error("D3 bears no tag");
    const under = fromScreen(small, tag);
    const found = elevationAnchor({ elementId: "f1", at: at(under.uMm, 1195, under.vMm) }, south, small);
    expect(found?.yPx).toBeCloseTo(tag.yPx, 6);
    expect((found?.xPx ?? 0) - tag.xPx).toBeGreaterThan(hexagonHalfPx.widthPx);
  });

  it("is nowhere for what this side does not show", () => {
    expect(elevationAnchor({ elementId: "f4", at: at(9000, 6000, 4000) }, south, view)).toBeNull();
    expect(elevationAnchor({ elementId: "d6", at: at(2700, 3707, 4000) }, south, view)).toBeNull();
  });
});

describe("the end of a leader on the isometric", () => {
  const model = isometricModel(demoScheme);
  const small = { originXPx: 500, originYPx: 400, pxPerM: 10 };

  it("is on a unit that nothing nearer covers there", () => {
    expect(isometricAnchor("t1", model, small)?.end).toBe("dot");
    expect(isometricAnchor("f4", model, small)).not.toBeNull();
  });

  it("is nowhere for an element the scheme does not have", () => {
    expect(isometricAnchor("nobody", model, small)).toBeNull();
  });
});
