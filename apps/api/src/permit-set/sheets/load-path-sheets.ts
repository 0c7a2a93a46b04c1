import type { Bearing } from "@cornerway/schema";
import { sides, type Derived } from "../derived.ts";
import { elevationFacesInk } from "../drawing/elevation.ts";
import { elevationExtent, groundInk, padsInk, postsInk } from "../drawing/elevation-frame.ts";
import { strokesInk, strokeWidth } from "../drawing/load-strokes.ts";
import { outlineD, planExtent } from "../drawing/plan.ts";
import { planFrame } from "../drawing/plan-frame.ts";
import { label, scaleBar, viewTitle } from "../drawing/signs.ts";
import type { Figure, Sheet } from "../figure.ts";
import { fact, heading, layColumn, prose } from "../paper/column.ts";
import { drawingSheet, sheetRoom } from "../paper/drawing-sheet.ts";
import type { Ink } from "../paper/ink.ts";
import { box, caption, circleD, path, text, type Box } from "../paper/shapes.ts";
import { fitView, type View } from "../paper/view.ts";
import type { SetSource } from "../set-source.ts";
import { written } from "../written.ts";
import { narrativeOf } from "./load-path-narrative.ts";
import { postForces } from "./post-forces.ts";

/** The way down on the four elevations, then storey by storey in plan with what is said of it. */
export function loadPathSheets(source: SetSource, derived: Derived): Sheet[] {
  return [elevationsSheet(source, derived), ...derived.plans.map((_, at) => storeySheet(source, derived, at))];
}

function elevationsSheet(source: SetSource, derived: Derived): Sheet {
  const { field, column } = sheetRoom(source);
  const say = written[source.units];
  const number = "S4.1";
  const cells = sides.map((side, at): { side: (typeof sides)[number]; cell: Box } => ({
    side,
    cell: {
      x: field.x + (at % 2) * (field.width / 2),
      y: field.y + Math.floor(at / 2) * (field.height / 2),
      width: field.width / 2 - 10,
      height: field.height / 2,
    },
  }));
  const laid = cells.map(({ side, cell }) => {
    const model = derived.elevations[side];
    const extent = elevationExtent(model);
    const inner = { x: cell.x + 30, y: cell.y + 12, width: cell.width - 60, height: cell.height - 66 };
    return { side, cell, model, extent, view: fitView(extent, inner, source.units) };
  });
  const [first] = laid;
  const told = layColumn(
    [
      heading("Load path"),
      prose(
        `Dead and imposed load as they come down by statics, unfactored, ${say.forceUnit}. Units are taken as rigid on their bearings: how load splits within one is not known from this.`,
      ),
      prose(
        "The width of a stroke is its force. Black is the container's own steel, grey added posts. A long break says that the load leaves the corner posts there.",
      ),
      fact("All that acts", `${say.force(source.assessment.statics.loadKn)} ${say.forceUnit}`),
      fact("What the ground gives", `${say.force(source.assessment.statics.reactionKn)} ${say.forceUnit}`),
      fact("Left over", `${say.force(source.assessment.statics.residualKn)} ${say.forceUnit}`),
    ],
    column,
  );
  const page = drawingSheet(
    source,
    { number, title: "Load path, elevations", chapter: "Load path", scale: "as noted" },
    [
      ...laid.map(({ side, cell, model, extent, view }, at) => ({
        role: "Figure" as const,
        alt: `Load path on the ${side} elevation`,
        inks: [
          ...elevationFacesInk(model, view, true),
          ...groundInk(model, view, extent),
          ...padsInk(model.pads, view),
          ...postsInk(model.posts, view),
          ...strokesInk(source.assessment, side, model, view, say),
          ...viewTitle({ x: cell.x, y: cell.y + cell.height - 22 }, at + 1, `${side} elevation`, view.scale.name, 190),
          ...scaleBar({ x: cell.x + 210, y: cell.y + cell.height - 23 }, view, source.units),
        ],
      })),
      ...told.blocks,
      ...(first === undefined ? [] : [keyBlock(first.view, { ...column, y: told.y + 24, height: 90 }, source)]),
    ],
  );
  return { page, figures: figuresOf(source, number) };
}

/** Four strokes at the scale of view 1. */
export function keyBlock(view: View, at: Box, { units }: SetSource) {
  const say = written[units];
  const knEach = [25, 50, 100, 200];
  const inks = knEach.flatMap((kn, index): Ink[] => {
    const x = at.x + 20 + index * 58;
    const wide = strokeWidth(kn, view);
    return [
      box({ x: x - wide / 2, y: at.y + 8, width: wide, height: 42 }, { fill: "ink" }),
      text(x, at.y + 62, say.force(kn), { anchor: "middle", size: 7.5 }),
    ];
  });
  return {
    role: "Figure" as const,
    alt: "Key to the width of strokes",
    inks: [caption(at.x, at.y, `Width of a stroke at ${view.scale.name}, ${say.forceUnit}`, { size: 7 }), ...inks],
  };
}

const figuresOf = ({ scheme, assessment }: SetSource, page: string): Figure[] => {
  const forces = postForces(assessment);
  return scheme.posts.flatMap(({ id, tag }) =>
    forces.has(id)
      ? [{ about: tag, quantity: "post force, kN", value: forces.get(id) ?? 0, from: "drawing", page }]
      : [],
  );
};

/** Where the units of one storey come down, and how much at each place. */
function storeySheet(source: SetSource, derived: Derived, at: number): Sheet {
  const { field, column } = sheetRoom(source);
  const { units, assessment } = source;
  const say = written[units];
  const plan = derived.plans[at];
  const storey = derived.storeys[at];
  if (plan === undefined || storey === undefined) throw new RangeError(`there is no storey ${at}`);
  const number = `S4.${at + 2}`;
  const name = `What the ${storey.name.toLowerCase()} level stands on`;
  const extent = planExtent(plan);
  const inner = { x: field.x + 60, y: field.y + 50, width: field.width - 130, height: field.height - 150 };
  const view = fitView(extent, inner, units);
  const foot = field.y + field.height - 22;
  const bearings = assessment.bearings.filter(({ unitId }) => storey.containerIds.includes(unitId));
  const told = [heading("The way down"), ...narrativeOf(source, derived, at).map(prose)];
  const laid = layColumn(told, column);
  const page = drawingSheet(source, { number, title: name, chapter: "Load path", scale: view.scale.name }, [
    {
      role: "Figure",
      alt: `${name}: ${bearings.length} bearings with their forces`,
      inks: [
        ...planFrame(derived.grid, view, extent, units),
        ...plan.below.map((unit) => path(outlineD(unit, view), { pen: "fine", dash: "hidden", tone: "pencil" })),
        ...plan.units.map((unit) => path(outlineD(unit, view), { pen: "edge" })),
        ...plan.units.flatMap(({ container, placed }) =>
          label(view.toPaper({ uMm: placed.frame.xMm, vMm: placed.frame.yMm }), container.tag, {
            size: 10,
            strong: true,
          }),
        ),
        ...bearings.flatMap((bearing) => bearingInk(bearing, view, derived, (kn) => say.force(kn))),
      ],
    },
    {
      role: "Figure",
      alt: `${name}: title, scale and scale bar`,
      inks: [
        ...viewTitle(
          { x: field.x, y: foot },
          1,
          name,
          `${view.scale.name} · forces in ${say.forceUnit}, unfactored`,
          280,
        ),
        ...scaleBar({ x: field.x + 320, y: foot - 1 }, view, units),
      ],
    },
    ...laid.blocks,
    ...(laid.used < told.length
      ? [
          {
            role: "P" as const,
            inks: [
              text(
                column.x,
                column.y + column.height + 6,
                `The rest is told in the calculations, under “Load path, storey by storey”.`,
                { size: 7, face: "lettering slanted" },
              ),
            ],
          },
        ]
      : []),
  ]);
  return { page, figures: [] };
}

/** A filled circle on a fitting or pad, an open one on a rail, a cross on air or sheet, with its force inwards. */
function bearingInk(bearing: Bearing, view: View, derived: Derived, force: (kn: number) => string): Ink[] {
  const at = view.toPaper({ uMm: bearing.at.xMm, vMm: bearing.at.yMm });
  const unit = derived.placed.get(bearing.unitId);
  const middle = unit === undefined ? at : view.toPaper({ uMm: unit.frame.xMm, vMm: unit.frame.yMm });
  const [dx, dy] = [middle.x - at.x, middle.y - at.y];
  const long = Math.max(1, Math.sqrt(dx * dx + dy * dy));
  const spot = { x: at.x + (dx / long) * 16, y: at.y + (Math.abs(dy) < 2 ? 0 : dy > 0 ? 9 : -5) + 2 };
  const sign =
    bearing.on === "air" || bearing.on === "sheet"
      ? path(`M${at.x - 4} ${at.y - 4}l8 8M${at.x + 4} ${at.y - 4}l-8 8`, { pen: "profile" })
      : path(circleD(at, 3.4), bearing.on === "rail" ? { pen: "profile", fill: "paper" } : { fill: "ink" });
  return [sign, ...label(spot, force(bearing.forceKn), { size: 7 })];
}
