import {
  fullestPlane,
  sectionModel,
  sectionWidthMm,
  type PaperRect,
  type SectionCut,
  type SectionModel,
} from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import type { Derived } from "../derived.ts";
import { alongString, uprightString } from "../drawing/dimensions.ts";
import { rectOnPaper } from "../drawing/elevation.ts";
import { groundHatch } from "../drawing/hatch.ts";
import { isometricInk } from "../drawing/isometric.ts";
import { label, levelMark, scaleBar, viewTitle } from "../drawing/signs.ts";
import type { Sheet } from "../figure.ts";
import { fact, heading, prose, shortList, wholeColumn, type ColumnItem } from "../paper/column.ts";
import { drawingSheet, sheetRoom } from "../paper/drawing-sheet.ts";
import { pt, type Ink } from "../paper/ink.ts";
import { box, path, rule, type Box } from "../paper/shapes.ts";
import { fitView, type View } from "../paper/view.ts";
import type { SetSource } from "../set-source.ts";
import { written } from "../written.ts";

/** A section across the building where it cuts most containers, and the building from the south-east. */
export function sectionSheet(source: SetSource, derived: Derived): Sheet {
  const room = sheetRoom(source);
  const { units, scheme } = source;
  const say = written[units];
  const plane = fullestPlane(scheme, "x") ?? { axis: "x", atMm: 0 };
  const model = sectionModel(scheme, plane);
  const half = room.field.height * 0.5;
  const upper: Box = { x: room.field.x + 90, y: room.field.y + 24, width: room.field.width - 170, height: half - 110 };
  const view = fitView(extentOf(model, scheme.site.groundZUm / 1000), upper, units);
  const middle = room.field.y + half;
  const foot = room.field.y + room.field.height - 20;
  const lower: Box = { x: room.field.x + 20, y: middle + 24, width: room.field.width - 40, height: foot - middle - 50 };
  const name = "Section 1, looking west";
  const spec = { number: "S3", title: "Section and isometric", chapter: "Section", scale: view.scale.name };
  const page = drawingSheet(source, spec, [
    {
      role: "Figure",
      alt: `${name}, through ${model.cuts.map(({ placed }) => placed.container.tag).join(", ")}`,
      inks: [
        ...sectionInk(model, view, source, derived),
        ...viewTitle(
          { x: room.field.x, y: middle - 16 },
          1,
          name,
          `${view.scale.name} · cut at x = ${say.length(plane.atMm)}`,
        ),
        ...scaleBar({ x: room.field.x + 300, y: middle - 17 }, view, units),
      ],
    },
    {
      role: "Figure",
      alt: "Isometric from the south-east, not to scale",
      inks: [
        ...isometricInk(derived.isometric, lower),
        ...viewTitle({ x: room.field.x, y: foot }, 2, "From the south-east", "isometric · not to scale"),
      ],
    },
    ...wholeColumn(
      [
        heading("Section 1"),
        fact("Cuts", shortList(model.cuts.map(({ placed }) => placed.container.tag))),
        ...clearHeights(model, say.length),
        heading("How to read it"),
        prose(
          "Rails, floor frame, roof and sheets are cut at the place stated; a sheet is drawn as one heavy line, and where an opening is cut there only its edge is drawn. What is not cut and stands beyond is lighter. Clear height is from the top of the bottom rail to the underside of the top rail; floor build-up and linings come off it.",
        ),
        prose("The isometric shows what stands where. It is not to scale and no dimension may be taken from it."),
      ],
      room.column,
    ),
  ]);
  return { page, figures: [] };
}

/** Containers of one clear height together. */
function clearHeights({ cuts }: SectionModel, length: (mm: number) => string): ColumnItem[] {
  const heights = new Map<string, string[]>();
  for (const { placed, floorMm, ceilingMm } of cuts) {
    const height = length(ceilingMm - floorMm);
    heights.set(height, [...(heights.get(height) ?? []), placed.container.tag]);
  }
  return [...heights].map(([height, tags]) => fact(`Clear height ${height}`, shortList(tags)));
}

function extentOf({ cuts }: SectionModel, ground: number) {
  return {
    u0: cuts.length === 0 ? 0 : Math.min(...cuts.map(({ u0Mm }) => u0Mm)),
    u1: cuts.length === 0 ? 1000 : Math.max(...cuts.map(({ u1Mm }) => u1Mm)),
    v0: Math.min(ground, ...cuts.map(({ z0Mm }) => z0Mm)),
    v1: Math.max(ground + 2600, ...cuts.map(({ z1Mm }) => z1Mm)),
  };
}

function sectionInk(model: SectionModel, view: View, { units, scheme }: SetSource, derived: Derived): Ink[] {
  const { cuts } = model;
  const ground = scheme.site.groundZUm / 1000;
  const us = [...new Set(cuts.flatMap(({ u0Mm, u1Mm }) => [u0Mm, u1Mm]))];
  const [x0, x1] = [view.x(Math.min(...us)) - 24, view.x(Math.max(...us)) + 24];
  const levels = derived.elevations.east.levels;
  return [
    path(groundHatch(x0, x1, view.y(ground)), { pen: "hair", tone: "graphite" }),
    rule(x0, x1, view.y(ground), "border"),
    ...model.beyond.map((unit) => box(rectOnPaper(view, unit), { fill: "paper", pen: "fine", tone: "pencil" })),
    ...postsBeyond(scheme, model.line.fromXMm).map((post) =>
      box(rectOnPaper(view, post), { fill: "paper", pen: "fine" }),
    ),
    ...model.pads.map((pad) => box(rectOnPaper(view, pad), { fill: "paper", pen: "profile" })),
    ...cuts.flatMap((cut) => cutInk(cut, view)),
    ...model.posts.map((post) => box(rectOnPaper(view, post), { fill: "ink" })),
    ...levels.flatMap(({ name, zMm }) => levelMark({ x: x0 - 8, y: view.y(zMm) }, name, written[units].level(zMm))),
    ...alongString({ mm: us, at: view.x }, view.y(ground) + 28, view.y(ground) + 12, units),
    ...uprightString({ mm: levels.map(({ zMm }) => zMm), at: view.y }, x1 + 14, x1, units),
  ];
}

/** Added posts west of the plane, which is looked at westwards: places along it are the site's y. */
const postsBeyond = ({ posts }: Scheme, atMm: number): PaperRect[] =>
  posts.flatMap(({ xUm, yUm, baseZUm, topZUm, section }) => {
    const half = sectionWidthMm(section) / 2;
    if (xUm / 1000 > atMm - half) return [];
    const uMm = yUm / 1000;
    return [{ u0Mm: uMm - half, u1Mm: uMm + half, z0Mm: baseZUm / 1000, z1Mm: topZUm / 1000 }];
  });

/** Where a sheet is cut out: its edges across, the opening's far edge as a fine line between them. */
function openingInk(uMm: number, sillMm: number, headMm: number, view: View): Ink[] {
  const [x, top, foot] = [view.x(uMm), view.y(headMm), view.y(sillMm)];
  return [
    box({ x: pt(x - 1.4), y: top, width: 2.8, height: pt(foot - top) }, { fill: "paper" }),
    path(`M${x} ${top}V${foot}`, { pen: "hair" }),
    path(`M${pt(x - 2)} ${top}H${pt(x + 2)}M${pt(x - 2)} ${foot}H${pt(x + 2)}`, { pen: "edge" }),
  ];
}

/** Rails solid, floor frame and roof as lines, side sheets as one line each. */
function cutInk({ placed, u0Mm, u1Mm, z0Mm, z1Mm, floorMm, ceilingMm, walls }: SectionCut, view: View): Ink[] {
  const { dimensions, container } = placed;
  const rail = (u: number, z0: number, z1: number, wide: number) =>
    box({ x: view.x(u), y: view.y(z1), width: view.length(wide), height: view.length(z1 - z0) }, { fill: "ink" });
  const foot = z0Mm + dimensions.baseAboveFittingMm;
  const roof = z1Mm - dimensions.proudOfRoofMm;
  const { bottomRailWidthMm: low, topRailWidthMm: high } = dimensions;
  return [
    box(
      { x: view.x(u0Mm), y: view.y(z1Mm), width: view.length(u1Mm - u0Mm), height: view.length(z1Mm - z0Mm) },
      { fill: "paper", pen: "hair", tone: "pencil" },
    ),
    ...walls.flatMap(({ uMm, openings }) => [
      path(`M${view.x(uMm)} ${view.y(floorMm)}V${view.y(ceilingMm)}`, { pen: "profile" }),
      ...openings.flatMap(({ z0Mm: sill, z1Mm: head }) => openingInk(uMm, sill, head, view)),
    ]),
    path(`M${view.x(u0Mm)} ${view.y(roof)}H${view.x(u1Mm)}M${view.x(u0Mm)} ${view.y(floorMm)}H${view.x(u1Mm)}`, {
      pen: "edge",
    }),
    path(`M${view.x(u0Mm)} ${pt(view.y(floorMm - 28))}H${view.x(u1Mm)}`, { pen: "hair" }),
    rail(u0Mm, foot, floorMm, low),
    rail(u1Mm - low, foot, floorMm, low),
    rail(u0Mm, ceilingMm, roof, high),
    rail(u1Mm - high, ceilingMm, roof, high),
    ...label({ x: view.x((u0Mm + u1Mm) / 2), y: view.y((z0Mm + z1Mm) / 2) }, container.tag, { size: 10, strong: true }),
  ];
}
