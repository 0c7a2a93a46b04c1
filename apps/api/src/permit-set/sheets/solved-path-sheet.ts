import type { RunForces } from "@cornerway/engine";
import { elementNames, inRow, inTags, runWords } from "@cornerway/schema";
import { sides, type Derived } from "../derived.ts";
import { elevationFacesInk } from "../drawing/elevation.ts";
import { elevationExtent, groundInk, padsInk, postsInk } from "../drawing/elevation-frame.ts";
import { strokesInk } from "../drawing/load-strokes.ts";
import { scaleBar, viewTitle } from "../drawing/signs.ts";
import { strandsInk } from "../drawing/strands.ts";
import type { Sheet } from "../figure.ts";
import { fact, fittedColumn, heading, prose, type ColumnItem } from "../paper/column.ts";
import { drawingSheet, sheetRoom } from "../paper/drawing-sheet.ts";
import { fitView } from "../paper/view.ts";
import type { SetSource } from "../set-source.ts";
import { keyBlock } from "./load-path-sheets.ts";
import type { Solved } from "../solved.ts";
import { written } from "../written.ts";

/** The way down as solved under the sum that governs most, on the four elevations; none where it was not solved. */
export function solvedPathSheets(source: SetSource, derived: Derived, solved: Solved | null): Sheet[] {
  return solved?.governing == null ? [] : [solvedSheet(source, derived, solved.governing)];
}

function solvedSheet(source: SetSource, derived: Derived, forces: RunForces): Sheet {
  const { field, column } = sheetRoom(source);
  const say = written[source.units];
  const number = `S4.${derived.plans.length + 2}`;
  const views = sides.map((side, at) => {
    const cell = {
      x: field.x + (at % 2) * (field.width / 2),
      y: field.y + Math.floor(at / 2) * (field.height / 2),
      width: field.width / 2 - 10,
      height: field.height / 2,
    };
    const model = derived.elevations[side];
    const extent = elevationExtent(model);
    const inner = { x: cell.x + 30, y: cell.y + 12, width: cell.width - 60, height: cell.height - 66 };
    const view = fitView(extent, inner, source.units);
    return {
      view,
      role: "Figure" as const,
      alt: `Load path as solved on the ${side} elevation`,
      inks: [
        ...elevationFacesInk(model, view, true),
        ...groundInk(model, view, extent),
        ...padsInk(model.pads, view),
        ...postsInk(model.posts, view),
        ...strandsInk(forces, side, model, view),
        ...strokesInk(forces, side, model, view, say),
        ...viewTitle({ x: cell.x, y: cell.y + cell.height - 22 }, at + 1, `${side} elevation`, view.scale.name, 190),
        ...scaleBar({ x: cell.x + 210, y: cell.y + cell.height - 23 }, view, source.units),
      ],
    };
  });
  const page = drawingSheet(source, { number, title: "Load path as solved", chapter: "Load path", scale: "as noted" }, [
    ...views.map(({ role, alt, inks }) => ({ role, alt, inks })),
    ...fittedColumn(
      told(source, derived, forces),
      { ...column, height: column.height - KEY_PT },
      "What the other units stand with is on the elevations, at the foot of each stroke.",
    ),
    ...views
      .slice(0, 1)
      .map(({ view }) => keyBlock(view, { ...column, y: column.y + column.height - KEY_PT + 14, height: 76 }, source)),
  ]);
  return { page, figures: [] };
}

/** Height of the key to strokes at the foot of the column, pt. */
const KEY_PT = 100;

function told(source: SetSource, derived: Derived, forces: RunForces): ColumnItem[] {
  const say = written[source.units];
  const force = (kn: number): string => `${say.force(kn)} ${say.forceUnit}`;
  const given = forces.reactions.reduce((sum, { upKn }) => sum + upKn, 0);
  return [
    heading("Load path as solved"),
    prose(
      `${runWords(inTags(forces.run, elementNames(source.scheme)))}, the sum that governs most. Factored, ${say.forceUnit}, on the line model, ${forces.assumptions}.`,
    ),
    prose(
      "The width of a stroke is its force, and it grows as load joins. Where load leaves the corner posts it is drawn as strands, streamlines of the vertical force in the sheets, alike in force.",
    ),
    ...(forces.held.length === 0
      ? []
      : [
          prose(`It stands only if ${inRow(forces.held.map(derived.tag))} are held by connections that are not drawn.`),
        ]),
    fact("A strand, about", force(forces.shareKn)),
    fact("What the ground gives", force(given)),
    ...derived.storeys
      .toReversed()
      .flatMap(({ name, containerIds }) => [
        heading(`${name} level`),
        ...containerIds.map((id) => prose(unitSentence(id, derived, forces, force))),
      ]),
  ];
}

/** "F1 stands with 160.2 and 52.4 kN on its corners and 148.0 kN on seats; 121.5 kN goes through its sheets." */
function unitSentence(id: string, { tag }: Derived, forces: RunForces, force: (kn: number) => string): string {
  const own = forces.path.filter(({ elementId }) => elementId === id);
  const corners = own.filter(({ via, leavesCorners }) => via === "corner post" && !leavesCorners);
  const seats = own.filter(({ via }) => via === "seat");
  const parts = [
    ...(corners.length === 0 ? [] : [`${inRow(corners.map(({ forceFootKn }) => force(forceFootKn)))} on its corners`]),
    ...(seats.length === 0 ? [] : [`${inRow(seats.map(({ forceFootKn }) => force(forceFootKn)))} off them`]),
  ];
  const through = forces.strands
    .filter((strand) => strand.unitId === id && !strand.id.includes(" round "))
    .reduce((sum, { forceKn }) => sum + forceKn, 0);
  const strands = through === 0 ? "" : `; ${force(through)} goes through its sheets`;
  return `${tag(id)} stands with ${parts.length === 0 ? "nothing" : inRow(parts)}${strands}.`;
}
