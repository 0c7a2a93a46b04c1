import { assess, elevationModel, planModel, pathStrokes } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import type { Side } from "../../src/drawing/contract.ts";
import { elevationLabels, tagSpots } from "../../src/drawing/elevation/elevation-labels.ts";
import { labelBox, placeLabels, sharedArea, type BoxPx } from "../../src/drawing/label/place-labels.ts";
import { elementVerdicts } from "../../src/drawing/marks/element-verdicts.ts";
import { elevationStrings } from "../../src/drawing/elevation/elevation-strings.ts";
import { framedPlan } from "../../src/drawing/plan/framed-plan.ts";
import { planLabels } from "../../src/drawing/plan/plan-labels.ts";
import { inkedBoxes } from "../../src/forces/inked-boxes.ts";
import { demoScheme } from "../support/demo-scheme.ts";

const assessment = assess(demoScheme);
const sides: readonly Side[] = ["south", "north", "east", "west"];
const scales = [50, 40, 25] as const;

const overlaps = (labels: readonly { key: string; box: BoxPx }[]): string[] =>
  labels.flatMap((one, index) =>
    labels
      .slice(index + 1)
      .filter((other) => sharedArea(one.box, other.box) > 0)
      .map((other) => `${one.key} over ${other.key}`),
  );

describe("lettering of the demo", () => {
  it.each(sides.flatMap((side) => scales.map((scale) => [side, scale] as const)))(
    "overlaps nowhere on the %s elevation at %d px a metre",
    (side, pxPerM) => {
      const model = elevationModel(demoScheme, side, ["A"]);
      const view = { originXPx: 300, originYPx: 500, pxPerM };
      const labels = elevationLabels(model, view, pathStrokes(assessment, side, model.faces, model.posts), "SI", {
        strings: elevationStrings(model, view, "SI"),
      });
      expect(labels.length).toBeGreaterThan(10);
      expect(overlaps(labels)).toEqual([]);
    },
  );

  it.each(sides)("leaves the tags of openings free on the %s elevation at 50 px a metre", (side) => {
    const model = elevationModel(demoScheme, side, ["A"]);
    const view = { originXPx: 300, originYPx: 500, pxPerM: 50 };
    const tags = tagSpots(model, view).map(({ tag, xPx, yPx }) => ({
      key: tag,
      box: { left: xPx - 11, right: xPx + 11, top: yPx - 9, bottom: yPx + 9 },
    }));
    const labels = elevationLabels(model, view, pathStrokes(assessment, side, model.faces, model.posts), "SI", {
      strings: elevationStrings(model, view, "SI"),
    });
    expect(overlaps([...tags, ...labels])).toEqual([]);
  });

  it.each([0, 1, 2].flatMap((storey) => [12.5, 20, 50].map((pxPerM) => [storey, pxPerM] as const)))(
    "overlaps nowhere on the plan of storey %d at %d px a metre",
    (storey, pxPerM) => {
      const model = planModel(demoScheme, storey);
      const view = { originXPx: 300, originYPx: 500, pxPerM };
      const { strings } = framedPlan(model, { scheme: demoScheme, view, revisionLetters: ["A"], units: "SI" });
      const labels = planLabels(model, view, elementVerdicts(assessment, new Set()), "SI", { strings });
      expect(labels.length).toBeGreaterThan(0);
      expect(overlaps(labels)).toEqual([]);
    },
  );
});

describe("keynotes at the ends of the field", () => {
  const model = elevationModel(demoScheme, "south", ["A"]);
  const notes = (originXPx: number, rightPx?: number) => {
    const view = { originXPx, originYPx: 500, pxPerM: 50 };
    const strings = elevationStrings(model, view, "SI");
    return elevationLabels(model, view, [], "SI", { strings, rightPx })
      .filter(({ kind }) => kind === "keynote")
      .map(({ box }) => box);
  };

  it("are cut off at neither of them: the field begins at 0", () => {
    const firstLeft = Math.min(...notes(300).map(({ left }) => left));
    const originXPx = 300 - firstLeft - 5;
    const boxes = notes(originXPx);
    expect(boxes.filter(({ left }) => left < 0)).toHaveLength(1);
    const rightPx = Math.max(...boxes.map(({ right }) => right)) - 1;
    const within = notes(originXPx, rightPx);
    expect(within.every(({ left, right }) => left >= 0 && right <= rightPx)).toBe(true);
    expect(within.length).toBeGreaterThanOrEqual(boxes.length - 2);
  });
});

describe("lettering beside what a layer inks", () => {
  const model = elevationModel(demoScheme, "south", ["A"]);
  const view = { originXPx: 300, originYPx: 500, pxPerM: 50 };
  const strokes = pathStrokes(assessment, "south", model.faces, model.posts);
  const strings = elevationStrings(model, view, "SI");
  const named = (inked: readonly BoxPx[]) =>
    elevationLabels(model, view, strokes, "SI", { strings, inked }).filter(({ kind }) => kind === "unit");

  it("moves off it, and the cells of a strand cover all of its way", () => {
    const [first] = named([]);
    if (first === undefined) throw new Error("the demo has units");
    const { left, right, top, bottom } = first.box;
    const way = [
      { xPx: left - 40, yPx: top },
      { xPx: right + 40, yPx: bottom },
    ];
    const inked = inkedBoxes([way]);
    const between = Array.from({ length: 50 }, (_, n) => ({
      xPx: left - 40 + ((right - left + 80) * n) / 49,
      yPx: top + ((bottom - top) * n) / 49,
    }));
    const isCovered = ({ xPx, yPx }: { xPx: number; yPx: number }) =>
      inked.some((box) => xPx >= box.left - 2 && xPx <= box.right + 2 && yPx >= box.top - 2 && yPx <= box.bottom + 2);
    expect(between.every(isCovered)).toBe(true);
    const moved = named(inked).find(({ key }) => key === first.key);
    expect(moved?.spot).not.toEqual(first.spot);
    expect(inked.every((box) => moved === undefined || sharedArea(box, moved.box) === 0)).toBe(true);
  });
});

describe("placing lettering", () => {
  const spot = (xPx: number) => ({ xPx, yPx: 100, anchor: "start" as const });

  it("takes the first spot that is clear, says when none is, and leaves out what would lie over lettering", () => {
    const wide = { key: "wide", text: "102 kN", sizePx: 12, spots: [spot(0)] };
    const free = { key: "free", text: "49 kN", sizePx: 12, spots: [spot(4), spot(200)] };
    const stuck = { key: "stuck", text: "49 kN", sizePx: 12, spots: [spot(8)] };
    const lined = { key: "lined", text: "49 kN", sizePx: 12, spots: [spot(400)] };
    const line = { left: 400, right: 402, top: 0, bottom: 200 };
    const placed = placeLabels([wide, free, stuck, lined], [line]);
    expect(placed.map(({ key, spot: at, clear }) => [key, at.xPx, clear])).toEqual([
      ["wide", 0, true],
      ["free", 200, true],
      ["lined", 400, false],
    ]);
  });

  it("turns the box of turned lettering: as tall as the text is long", () => {
    const level = labelBox("2.896", 11, { xPx: 0, yPx: 0, anchor: "middle" });
    const turned = labelBox("2.896", 11, { xPx: 0, yPx: 0, anchor: "middle", turned: true });
    expect(turned.bottom - turned.top).toBeCloseTo(level.right - level.left, 9);
  });
});
