import { isoPoint, type AnalyticalModel, type SchemeModel } from "@cornerway/engine";
import type { Sheet } from "../figure.ts";
import { fact, heading, prose, wholeColumn } from "../paper/column.ts";
import { drawingSheet, sheetRoom } from "../paper/drawing-sheet.ts";
import { pt, type Ink } from "../paper/ink.ts";
import { circleD, path, type At, type Box } from "../paper/shapes.ts";
import { viewTitle } from "../drawing/signs.ts";
import type { SetSource } from "../set-source.ts";

/** The line model that the engine makes of the scheme: nodes, members, shear strips, releases, bearings and supports. */
export function modelSheet(source: SetSource, { model }: SchemeModel): Sheet {
  const { field, column } = sheetRoom(source);
  const room: Box = { x: field.x + 10, y: field.y + 10, width: field.width - 20, height: field.height - 70 };
  const foot = field.y + field.height - 22;
  const released = model.beams.filter(({ rel_i, rel_j }) => (rel_i?.length ?? 0) + (rel_j?.length ?? 0) > 0).length;
  const page = drawingSheet(source, { number: "S8", title: "Model", chapter: "Model" }, [
    {
      role: "Figure",
      alt: `Line model of ${model.nodes.length} nodes, ${model.beams.length} members and ${model.panels.length} shear strips`,
      inks: [
        ...modelInk(model, room),
        ...viewTitle({ x: field.x, y: foot }, 1, "Line model from the south-east", "isometric · not to scale", 260),
      ],
    },
    ...wholeColumn(
      [
        heading("What is in it"),
        fact("Nodes", String(model.nodes.length)),
        fact("Members", `${model.beams.length}, of ${Object.keys(model.sections).length} sections`),
        fact("Ends released", `on ${released} members`),
        fact("Shear strips", String(model.panels.length)),
        fact("Bearings and joints", String(model.links.length)),
        fact("Springs", String(model.springs.length)),
        fact("Supports", String(model.supports.length)),
        heading("How it is drawn"),
        prose(
          "Members are lines through their nodes, released ends open circles, supports triangles. Shear strips, the folded sheets, are left out where they would hide the frame; every second strip's diagonal shows where they are.",
        ),
        heading("Theory"),
        prose(
          "Small movements, linear steel. Members have six freedoms at each end; sheets carry shear, stand upright along their folds and have next to no stiffness along the wall. Bearings press and do not pull unless something drawn holds them.",
        ),
        prose("The model's numbers are echoed in the calculations, under “Model and input”."),
      ],
      column,
    ),
  ]);
  return { page, figures: [] };
}

function modelInk(model: AnalyticalModel, room: Box): Ink[] {
  const raw = new Map(model.nodes.map(({ id, x, y, z }) => [id, isoPoint({ xMm: x, yMm: y, zMm: z })]));
  const all = [...raw.values()];
  if (all.length === 0) return [];
  const range = (values: readonly number[]) =>
    values.reduce((r, v) => ({ a: Math.min(r.a, v), b: Math.max(r.b, v) }), { a: Infinity, b: -Infinity });
  const [us, vs] = [range(all.map(({ rightMm }) => rightMm)), range(all.map(({ downMm }) => downMm))];
  const perMm = Math.min(room.width / Math.max(1, us.b - us.a), room.height / Math.max(1, vs.b - vs.a));
  const at = (id: string): At | undefined => {
    const p = raw.get(id);
    if (p === undefined) return undefined;
    return {
      x: room.x + room.width / 2 + (p.rightMm - (us.a + us.b) / 2) * perMm,
      y: room.y + room.height / 2 + (p.downMm - (vs.a + vs.b) / 2) * perMm,
    };
  };
  const lineOf = (i: string, j: string): string => {
    const [a, b] = [at(i), at(j)];
    return a === undefined || b === undefined ? "" : `M${pt(a.x)} ${pt(a.y)}L${pt(b.x)} ${pt(b.y)}`;
  };
  const strips = model.panels.filter((_, index) => index % 2 === 0).map(({ nodes }) => lineOf(nodes[0], nodes[2]));
  const releases = model.beams.flatMap(({ i, j, rel_i, rel_j }) => [
    ...((rel_i?.length ?? 0) > 0 ? [i] : []),
    ...((rel_j?.length ?? 0) > 0 ? [j] : []),
  ]);
  const supports = model.supports.flatMap(({ node }) => at(node) ?? []);
  return [
    path(strips.join(""), { pen: "hair", tone: "ruling" }),
    path(model.beams.map(({ i, j }) => lineOf(i, j)).join(""), { pen: "fine" }),
    path(model.links.map(({ i, j }) => lineOf(i, j)).join(""), { pen: "profile" }),
    path(
      [...new Set(releases)]
        .flatMap((id) => at(id) ?? [])
        .map((p) => circleD(p, 0.9))
        .join(""),
      { pen: "hair", fill: "paper" },
    ),
    path(supports.map(({ x, y }) => `M${pt(x)} ${pt(y)}l-3.4 6h6.8Z`).join(""), { pen: "edge", fill: "paper" }),
  ].filter(({ d }) => d !== "");
}
