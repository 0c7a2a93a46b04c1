import type { ElevationModel } from "@cornerway/engine";
import { sides, type Derived } from "../derived.ts";
import { markedOnElevation } from "../changes.ts";
import { cloudsInk } from "../drawing/clouds.ts";
import { elevationFacesInk, elevationTags } from "../drawing/elevation.ts";
import {
  elevationExtent,
  elevationEye,
  elevationFrame,
  groundInk,
  padsInk,
  postsInk,
} from "../drawing/elevation-frame.ts";
import { objectsInk } from "../drawing/objects.ts";
import { scaleBar, viewTitle } from "../drawing/signs.ts";
import type { Figure, Sheet } from "../figure.ts";
import { fact, fittedColumn, heading, prose, shortList } from "../paper/column.ts";
import { drawingSheet, sheetRoom } from "../paper/drawing-sheet.ts";
import { fitView } from "../paper/view.ts";
import { capital } from "../paper/words.ts";
import type { SetSource } from "../set-source.ts";
import { written } from "../written.ts";

/** The four elevations, each at the largest scale its sheet takes. */
export function elevationSheets(source: SetSource, derived: Derived): Sheet[] {
  const room = sheetRoom(source);
  return sides.map((side, at) => {
    const model = derived.elevations[side];
    const name = `${capital(side)} elevation`;
    const extent = elevationExtent(model);
    const inner = {
      x: room.field.x + 90,
      y: room.field.y + 60,
      width: room.field.width - 170,
      height: room.field.height - 170,
    };
    const view = fitView(extent, inner, source.units);
    const foot = room.field.y + room.field.height - 22;
    const number = `S2.${at + 1}`;
    const page = drawingSheet(source, { number, title: name, chapter: "Elevations", scale: view.scale.name }, [
      {
        role: "Figure",
        alt: `${name} of ${model.faces.length} container faces`,
        inks: [
          ...elevationFrame(model, view, extent, source.units),
          ...elevationFacesInk(model, view),
          ...groundInk(model, view, extent),
          ...padsInk(model.pads, view),
          ...postsInk(model.posts, view),
          ...objectsInk(model.objects, elevationEye(side, view)),
          ...elevationTags(model, view),
          ...cloudsInk(source, markedOnElevation(source, side), view),
        ],
      },
      {
        role: "Figure",
        alt: `${name}: title, scale and scale bar`,
        inks: [
          ...viewTitle({ x: room.field.x, y: foot }, 1, name, view.scale.name),
          ...scaleBar({ x: room.field.x + 300, y: foot - 1 }, view, source.units),
        ],
      },
      ...fittedColumn(
        [
          heading("This side"),
          fact(
            "Levels",
            model.levels.map(({ name: level, zMm }) => `${level} ${written[source.units].level(zMm)}`).join(", "),
          ),
          fact("Openings", openingTags(model)),
          fact(
            "Added posts",
            model.posts
              .filter(({ behind }) => !behind)
              .map(({ post }) => post.tag)
              .join(", ") || "none seen",
          ),
          heading("How to read it"),
          prose(
            "Corner fittings are solid and to size; rails, posts and sills are to size; folds of the sheet are at their true pitch. Added steel is hatched in pairs. Faces set back behind the front of their level are lighter and bear no tags.",
          ),
          prose(
            "Openings are drawn to their clear size and set out on the cut plans, from the outer face of the corner fitting.",
          ),
        ],
        room.column,
        "The rest is in the schedules, S6.",
      ),
    ]);
    return { page, figures: figuresOf(model, number) };
  });
}

const openingTags = ({ faces }: ElevationModel): string =>
  shortList(
    faces.filter(({ beyond }) => !beyond).flatMap(({ openings }) => openings.map(({ opening }) => opening.tag)),
  ) || "none";

/** What the inked rectangles measure. */
function figuresOf({ faces, posts }: ElevationModel, page: string): Figure[] {
  return [
    ...faces.flatMap((face) =>
      face.openings.flatMap(({ opening, u0Mm, u1Mm, z0Mm, z1Mm }): Figure[] => [
        { about: opening.tag, quantity: "opening width", value: (u1Mm - u0Mm) / face.squeeze, from: "drawing", page },
        { about: opening.tag, quantity: "opening height", value: z1Mm - z0Mm, from: "drawing", page },
      ]),
    ),
    ...posts.map(({ post, z0Mm, z1Mm }): Figure => ({
      about: post.tag,
      quantity: "post height",
      value: z1Mm - z0Mm,
      from: "drawing",
      page,
    })),
  ];
}
