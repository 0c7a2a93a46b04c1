import type { ElevationModel } from "@cornerway/engine";
import type { UnitSystem } from "@cornerway/schema";
import { ink } from "../../look/ink.ts";
import { drawnLength } from "../../units/drawn-length.ts";
import type { Label } from "../label/place-labels.ts";
import { rectToPx } from "../paper-to-px.ts";
import type { ViewTransform } from "../view-transform.ts";

export type Keynote = Label & { colour: string; fontWeight: number };

/** On a view smaller than this, px a metre, the schedules alone say it. */
const leastPxPerM = 18;

/** What an added post or a pad is, in a line beside it: the section, the size. Of those that stand behind, none. */
export const keynotes = (model: ElevationModel, view: ViewTransform, units: UnitSystem): Keynote[] =>
  view.pxPerM < leastPxPerM ? [] : [...postNotes(model, view), ...padNotes(model, view, units)];

const postNotes = (model: ElevationModel, view: ViewTransform): Keynote[] =>
  model.posts
    .filter(({ behind }) => !behind)
    .map((place): Keynote => {
      const { xPx, yPx, widthPx, heightPx } = rectToPx(view, place);
      return {
        ...note(`keynote-${place.post.id}`, place.post.section, ink.prussian),
        spots: [0.62, 0.76, 0.3, 0.16].flatMap((share) => [
          { xPx: xPx + widthPx + 6, yPx: yPx + heightPx * share, anchor: "start" as const },
          { xPx: xPx - 6, yPx: yPx + heightPx * share, anchor: "end" as const },
        ]),
      };
    });

const padNotes = (model: ElevationModel, view: ViewTransform, units: UnitSystem): Keynote[] =>
  model.pads
    .filter(({ behind }) => !behind)
    .map((place): Keynote => {
      const { pad } = place;
      const { xPx, yPx, widthPx } = rectToPx(view, place);
      const size = [pad.lengthUm, pad.widthUm, pad.depthUm].map((um) => drawnLength(um / 1000, units)).join(" × ");
      return {
        ...note(`keynote-${pad.id}`, `${pad.tag} ${size}`, ink.graphite),
        spots: [
          { xPx: xPx + widthPx + 6, yPx: yPx + underGroundPx, anchor: "start" },
          { xPx: xPx - 6, yPx: yPx + underGroundPx, anchor: "end" },
        ],
      };
    });

/** Under the hatch of the ground, over the strings. */
const underGroundPx = 25;

const note = (key: string, text: string, colour: string) => ({ key, text, colour, sizePx: 11, fontWeight: 400 });
