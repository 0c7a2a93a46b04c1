import { assess, elevationModel, levelsOf, pathStrokes, planModel, sectionModel, storeysOf } from "@cornerway/engine";
import type { PathStroke } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import type { Side } from "../../src/drawing/contract.ts";
import { elevationLabels, tagSpots, type ElevationLabel } from "../../src/drawing/elevation/elevation-labels.ts";
import { labelBox, sharedArea, type BoxPx } from "../../src/drawing/label/place-labels.ts";
import { elementVerdicts } from "../../src/drawing/marks/element-verdicts.ts";
import { elevationStrings } from "../../src/drawing/elevation/elevation-strings.ts";
import { framedPlan } from "../../src/drawing/plan/framed-plan.ts";
import { planLabels } from "../../src/drawing/plan/plan-labels.ts";
import { sectionExtent } from "../../src/drawing/section/section-extent.ts";
import { sectionLabels } from "../../src/drawing/section/section-labels.ts";
import { toScreen, type ScreenPoint, type ViewTransform } from "../../src/drawing/view-transform.ts";
import { layViews } from "../../src/paper/lay-views.ts";
import { magnified, plainLens, plainLenses, throughLenses } from "../../src/paper/lens.ts";
import { firstLine } from "../../src/paper/section-line.ts";
import { hexagonHalfPx } from "../../src/look/hexagon-size.ts";
import { demoScheme } from "../support/demo-scheme.ts";
import { manyUnits } from "../support/many-units.ts";

interface Lettered {
  key: string;
  box: BoxPx;
}

const overlaps = (labels: readonly Lettered[]): string[] =>
  labels.flatMap((one, index) =>
    labels
      .slice(index + 1)
      .filter((other) => sharedArea(one.box, other.box) > 0)
      .map((other) => `${one.key} over ${other.key}`),
  );

/**
 * A figure of a force is read as that of its own stroke: it stands nearer to it than to what any other figure is of, or
 * a leader ends there that runs through no other lettering. Found anew from the engine's strokes.
 */
function misread(labels: readonly ElevationLabel[], strokes: readonly PathStroke[], view: ViewTransform): string[] {
  const at = (stroke: PathStroke) => {
    const foot = toScreen(view, stroke.to);
    const fall = stroke.figureAt === "head" || stroke.stub ? 8 : -8;
    return { xPx: foot.xPx, yPx: foot.yPx + fall };
  };
  const places = new Map(
    strokes.filter(({ figureAt }) => figureAt !== null).map((stroke) => [`force-${stroke.stretch.id}`, at(stroke)]),
  );
  const apart = ({ left, right, top, bottom }: BoxPx, { xPx, yPx }: ScreenPoint) =>
    Math.hypot(Math.max(left - xPx, 0, xPx - right), Math.max(top - yPx, 0, yPx - bottom));
  return labels
    .filter(({ kind }) => kind === "force")
    .flatMap(({ key, box, spot: { lead } }) => {
      const own = places.get(key);
      if (own === undefined) return [`${key} is of no stroke`];
      if (lead !== undefined) {
        const ends = Math.abs(lead.xPx - own.xPx) < 14 && Math.abs(lead.yPx - own.yPx) < 20;
        const run = {
          left: Math.min(lead.xPx, box.right),
          right: Math.max(lead.xPx, box.left),
          top: lead.yPx,
          bottom: lead.yPx + 0.1,
        };
        const through = labels.filter((other) => other.key !== key && sharedArea(other.box, run) > 0);
        return [
          ...(ends ? [] : [`${key} leads elsewhere`]),
          ...through.map((other) => `${key} leads through ${other.key}`),
        ];
      }
      return [...places]
        .filter(([other, place]) => other !== key && apart(box, place) <= apart(box, own))
        .map(([other]) => `${key} is read as ${other}`);
    });
}

const sides: readonly Side[] = ["south", "north", "east", "west"];
/** The drawing field of the sheet at 1440 × 900, 1024 × 768 and 390 × 844, px. */
const fields = [
  { widthPx: 934, heightPx: 868 },
  { widthPx: 570, heightPx: 736 },
  { widthPx: 368, heightPx: 330 },
];

const assessed = (scheme: Scheme) => ({ scheme, assessment: assess(scheme) });
const buildings = [24, 60].flatMap((count) => [3, 17].map((seed) => ({ count, seed })));
const known = new Map(buildings.map(({ count, seed }) => [`${count}/${seed}`, assessed(manyUnits(count, seed))]));

describe.each(buildings)("a building of $count containers (drawn by $seed)", ({ count, seed }) => {
  const { scheme, assessment } = known.get(`${count}/${seed}`) ?? assessed(manyUnits(count, seed));

  it.each(sides)(
    "has no lettering over lettering on its %s elevation, whatever the sheet's size and the scale",
    (side) => {
      const model = elevationModel(scheme, side, ["A"]);
      const strokes = pathStrokes(assessment, side, model.faces, model.posts);
      let shown = 0;
      for (const field of fields) {
        const laid = layViews(field, scheme, side, 0);
        for (const times of [1, 3]) {
          const lens = magnified(plainLens, laid.elevation, { xPx: 200, yPx: 200 }, times);
          const view = throughLenses(laid, { ...plainLenses, elevation: lens }).elevation.transform;
          const tags = tagSpots(model, view).map(({ id, xPx, yPx }) => ({
            key: id,
            box: {
              left: xPx - hexagonHalfPx.widthPx,
              right: xPx + hexagonHalfPx.widthPx,
              top: yPx - hexagonHalfPx.heightPx,
              bottom: yPx + hexagonHalfPx.heightPx,
            },
          }));
          const labels = elevationLabels(model, view, strokes, "SI", {
            strings: elevationStrings(model, view, "SI"),
          });
          shown += labels.length;
          expect(overlaps([...labels, ...tags])).toEqual([]);
          expect(misread(labels, strokes, view)).toEqual([]);
        }
      }
      expect(shown).toBeGreaterThan(count);
    },
  );

  it("has none on the plan of any storey, nor in a section across or along", () => {
    const verdicts = elementVerdicts(assessment, new Set());
    for (const field of fields.slice(0, 2)) {
      for (const { index } of storeysOf(scheme)) {
        const { plan } = layViews(field, scheme, "south", index);
        const model = planModel(scheme, index);
        const view = plan.transform;
        const { strings, circles } = framedPlan(model, { scheme, view, revisionLetters: [], units: "SI" });
        const labels = planLabels(model, view, verdicts, "SI", { strings, circles });
        expect(labels.length).toBeGreaterThan(0);
        expect(overlaps([...labels, ...circles.map((box, at) => ({ key: `circle ${at}`, box }))])).toEqual([]);
      }
      for (const axis of ["x", "y"] as const) {
        const line = firstLine(scheme, axis, 0);
        if (line === null) throw new Error("the building has no section");
        const view = layViews(field, scheme, "south", 0, { section: line }).isometric.transform;
        const model = sectionModel(scheme, line);
        const right = view.originXPx + (sectionExtent(model, 0).u1Mm * view.pxPerM) / 1000;
        const labels = sectionLabels(model, levelsOf(scheme), view, right, "SI");
        expect(labels.length).toBeGreaterThan(3);
        expect(overlaps(labels)).toEqual([]);
      }
    }
  });
});

describe("the demo on a phone", () => {
  const assessment = assess(demoScheme);
  const field = { widthPx: 368, heightPx: 330 };

  it.each(sides)("letters the figure of every force on its %s elevation where it is read as its own", (side) => {
    const model = elevationModel(demoScheme, side, ["A"]);
    const strokes = pathStrokes(assessment, side, model.faces, model.posts);
    const view = layViews(field, demoScheme, side, 0).elevation.transform;
    const labels = elevationLabels(model, view, strokes, "SI", { strings: elevationStrings(model, view, "SI") });
    const figures = labels.filter(({ kind }) => kind === "force").length;
    expect(figures).toBe(strokes.filter(({ figureAt }) => figureAt !== null).length);
    expect(misread(labels, strokes, view)).toEqual([]);
  });
});

it("finds lettering that lies over lettering", () => {
  const one = labelBox("G1", 15, { xPx: 0, yPx: 0, anchor: "start" });
  const other = labelBox("G2", 15, { xPx: 8, yPx: 4, anchor: "start" });
  expect(
    overlaps([
      { key: "G1", box: one },
      { key: "G2", box: other },
    ]),
  ).toEqual(["G1 over G2"]);
});
