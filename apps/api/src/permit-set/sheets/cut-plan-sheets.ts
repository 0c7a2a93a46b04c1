import { compassOf, faceFrame, type PlacedContainer } from "@cornerway/engine";
import { faces, type Container, type Face, type Opening } from "@cornerway/schema";
import { markedOnCut } from "../changes.ts";
import type { Derived } from "../derived.ts";
import { cloudsInk } from "../drawing/clouds.ts";
import { alongFace, cutFaceInk, openingOnFace, openingRect, type CutFace } from "../drawing/cut-face.ts";
import { scaleBar, viewTitle } from "../drawing/signs.ts";
import type { Figure, Sheet } from "../figure.ts";
import { fact, fittedColumn, heading, prose } from "../paper/column.ts";
import { drawingSheet, sheetRoom } from "../paper/drawing-sheet.ts";
import type { Box } from "../paper/shapes.ts";
import { fitView, type View } from "../paper/view.ts";
import { capital } from "../paper/words.ts";
import type { SetSource } from "../set-source.ts";
import { written } from "../written.ts";

/** Faces drawn on one sheet; a container with more gets a second sheet. */
const mostFaces = 4;

/** For each container that is cut, its cut faces laid flat and dimensioned from the corner fitting. */
export function cutPlanSheets(source: SetSource, derived: Derived): Sheet[] {
  const parts = source.scheme.containers.flatMap((container) => {
    const cuts = facesOf(source, derived, container);
    return Array.from({ length: Math.ceil(cuts.length / mostFaces) }, (_, at) => ({
      container,
      cuts: cuts.slice(at * mostFaces, (at + 1) * mostFaces),
    }));
  });
  return parts.map(({ container, cuts }, at) => cutPlanSheet(source, container, cuts, `S5.${at + 1}`));
}

function facesOf({ scheme }: SetSource, derived: Derived, { id }: Container): CutFace[] {
  const placed = derived.placed.get(id);
  if (placed === undefined) return [];
  return faces.flatMap((face) => {
    const openings = scheme.openings.filter((opening) => opening.containerId === id && opening.face === face);
    return openings.length === 0 ? [] : [{ placed, face, openings }];
  });
}

function cutPlanSheet(source: SetSource, container: Container, cuts: readonly CutFace[], number: string): Sheet {
  const room = sheetRoom(source);
  const title = `Cut plan, container ${container.tag}`;
  const laid = cuts.map((cut, at) => ({ cut, at, ...viewOf(source, cut, cellOf(room.field, cuts.length, at)) }));
  const views = laid.map(({ view }) => view.scale.name);
  const scale = new Set(views).size === 1 ? (views[0] ?? "none") : "as noted";
  const page = drawingSheet(source, { number, title, chapter: "Cut plans", scale }, [
    ...laid.flatMap(({ cut, at, view, cell }) => [
      {
        role: "Figure" as const,
        alt: `${faceTitle(cut)} of ${container.tag}, cut for ${cut.openings.map(({ tag }) => tag).join(", ")}`,
        inks: [
          ...cutFaceInk(cut, view, source.units),
          ...cloudsInk(source, markedOnCut(source, placeOn(cut, container)), view),
          ...viewTitle({ x: cell.x, y: cell.y + cell.height - 14 }, at + 1, faceTitle(cut), view.scale.name, 200),
          ...scaleBar({ x: cell.x + 215, y: cell.y + cell.height - 15 }, view, source.units, cell.width - 240),
        ],
      },
    ]),
    ...fittedColumn(columnOf(source, container, cuts), room.column, "The other openings are in the schedules, S6."),
  ]);
  return { page, figures: laid.flatMap(({ cut, view }) => figuresOf(cut, view, number)) };
}

/** Where an opening lies on this face of its container, now or in a set before. */
const placeOn =
  (cut: CutFace, { id }: Container) =>
  (opening: Opening) =>
    opening.containerId === id && opening.face === cut.face ? openingOnFace(cut, opening) : null;

/** One face over the other; from three on in two columns. */
function cellOf(field: Box, count: number, at: number): Box {
  const columns = count > 2 ? 2 : 1;
  const rows = Math.ceil(count / columns);
  const [width, height] = [field.width / columns, field.height / rows];
  return {
    x: field.x + (at % columns) * width,
    y: field.y + Math.floor(at / columns) * height,
    width: width - 8,
    height,
  };
}

function viewOf({ units }: SetSource, { placed, face }: CutFace, cell: Box): { view: View; cell: Box } {
  const { u1, v1 } = placed.dimensions.face(face);
  const inner = { x: cell.x + 40, y: cell.y + 10, width: cell.width - 90, height: cell.height - 90 };
  return { view: fitView({ u0: 0, u1, v0: 0, v1 }, inner, units), cell };
}

/** Long sides by the compass, ends by their name. */
const faceTitle = ({ placed, face }: CutFace): string => capital(faceName(placed, face));

export function faceName(placed: PlacedContainer, face: Face): string {
  if (face === "roof") return "roof, seen from above";
  if (face === "floor") return "floor, seen from above";
  const side = compassOf(faceFrame(placed, face).normal);
  return face === "front" || face === "door" ? `${face} end, facing ${side}` : `${face} side, facing ${side}`;
}

const stages: Readonly<Record<string, string>> = {
  "after placing": "after the container stands in its place and its locks are closed",
  "after shoring": "after it is shored where it stands",
};

function columnOf({ units }: SetSource, container: Container, cuts: readonly CutFace[]) {
  const say = written[units];
  const openings = cuts.flatMap((cut) => cut.openings);
  return [
    heading(`Container ${container.tag}, type ${container.type}`),
    ...openings.map((opening) => fact(opening.tag, openingWords(opening, say.length))),
    heading("How to cut"),
    prose(
      "Measure from the outer face of the corner fitting named by the view, not from the sheet. Hatched zones are posts, rails, header and sill: nothing in them is cut, drilled or heated that is not drawn so here.",
    ),
    ...(openings.some(({ cut }) => cut === undefined)
      ? [
          prose(
            "Openings without a stage are cut in the yard; the container is then lifted as it is cut. The lift needs a plan of its own.",
          ),
        ]
      : []),
    prose(
      "Measure the steel of this container before the first cut. A bent post, a cut rail or rust through its section stops the work until the engineer has seen it.",
    ),
  ];
}

const openingWords = (
  { use, widthUm, heightUm, sillUm, offsetUm, framed, framing, cut }: Opening,
  length: (mm: number) => string,
): string =>
  [
    `${use}, ${length(widthUm / 1000)} × ${length(heightUm / 1000)} clear, ${length(offsetUm / 1000)} from the fitting, sill ${length(sillUm / 1000)}`,
    framed
      ? framing === undefined
        ? "framed"
        : `jambs ${framing.jamb}, header ${framing.header}${framing.sill === undefined ? "" : `, sill ${framing.sill}`}`
      : "not framed",
    cut === undefined ? "cut in the yard" : `cut ${stages[cut] ?? cut}`,
  ].join("; ");

/** What the inked rectangles measure, back from paper. */
function figuresOf(cut: CutFace, view: View, page: string): Figure[] {
  const perPt = 1 / view.length(1);
  return cut.openings.flatMap((opening): Figure[] => {
    const at = openingRect(cut, opening, view);
    const near = alongFace(cut, 0) === 0 ? at.x : at.x + at.width;
    const about = opening.tag;
    const offset = Math.abs(near - view.x(alongFace(cut, 0))) * perPt;
    const sill = (view.y(0) - (at.y + at.height)) * perPt;
    // Paper is rounded to 0.01 pt: under 1 mm at every scale a cut plan has.
    return [
      { about, quantity: "opening width", value: at.width * perPt, from: "drawing", page },
      { about, quantity: "opening height", value: at.height * perPt, from: "drawing", page },
      { about, quantity: "opening offset", value: Math.round(offset), from: "drawing", page },
      { about, quantity: "opening sill", value: Math.round(sill), from: "drawing", page },
    ];
  });
}
