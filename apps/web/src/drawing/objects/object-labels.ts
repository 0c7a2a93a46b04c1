import { type SeenObject } from "@cornerway/engine";
import { atScale } from "./at-scale.ts";
import type { UnitSystem } from "@cornerway/schema";
import { ink } from "../../look/ink.ts";
import type { BoxPx, Label, Spot } from "../label/place-labels.ts";
import type { RectPx } from "../px-path.ts";
import type { ObjectEye } from "./object-eye.ts";
import { objectInk } from "./object-ink.ts";

export type ObjectLabel = Label & { kind: "object"; colour: string; fontWeight: number; trackingEm: number };

/** What is lettered beside added things: the labels of beams and seats, the figures of loads. */
export const objectLabels = (objects: readonly SeenObject[], eye: ObjectEye, units: UnitSystem): ObjectLabel[] =>
  spotsInOrder(objects, eye, units).map(({ id, figures, rect, isLoad }) => ({
    key: `object-${id}`,
    text: figures.length > mostNamed ? `${figures[0] ?? ""} +${figures.length - 1}` : figures.join(", "),
    kind: "object",
    sizePx: 11,
    spots: spotsRound(rect),
    colour: isLoad ? ink.graphite : ink.prussian,
    fontWeight: 600,
    trackingEm: 0.02,
  }));

/** Where the signs of added things stand, for lettering to keep off. */
export const objectBoxes = (objects: readonly SeenObject[], eye: ObjectEye, units: UnitSystem): BoxPx[] =>
  atScale(objects, eye.pxPerM)
    .filter(({ object }) => object.kind !== "beam")
    .map(({ object, hidden }) => boxOf(objectInk(object, eye, hidden, units).rect));

const boxOf = ({ xPx, yPx, widthPx, heightPx }: RectPx): BoxPx => ({
  left: xPx,
  right: xPx + widthPx,
  top: yPx,
  bottom: yPx + heightPx,
});

const mostNamed = 2;
/** Signs nearer to each other than this on the paper share one label, px. */
const oneSpotPx = 6;

type LabelledSpot = { id: string; figures: string[]; rect: RectPx; isLoad: boolean };

/** What wants a label, the nearest first; things one behind the other are labelled together. */
function spotsInOrder(objects: readonly SeenObject[], eye: ObjectEye, units: UnitSystem): LabelledSpot[] {
  const spots: LabelledSpot[] = [];
  for (const { object, hidden } of atScale(objects, eye.pxPerM).toReversed()) {
    const { rect, figure } = objectInk(object, eye, hidden, units);
    if (figure === null) continue;
    const isLoad = object.kind === "load";
    const there = spots.find((spot) => spot.isLoad === isLoad && apartPx(spot.rect, rect) < oneSpotPx);
    if (there === undefined) spots.push({ id: object.id, figures: [figure], rect, isLoad });
    else there.figures.push(figure);
  }
  return spots;
}

const apartPx = (a: RectPx, b: RectPx): number =>
  Math.hypot(a.xPx + a.widthPx / 2 - b.xPx - b.widthPx / 2, a.yPx + a.heightPx / 2 - b.yPx - b.heightPx / 2);

/** Above, below, to the right and left of a sign, and farther off where these are taken. */
function spotsRound({ xPx, yPx, widthPx, heightPx }: RectPx): Spot[] {
  const [right, foot] = [xPx + widthPx, yPx + heightPx];
  const middle = xPx + widthPx / 2;
  return [4, 14, 26].flatMap((off): Spot[] => [
    { xPx: middle, yPx: yPx - off, anchor: "middle" },
    { xPx: middle, yPx: foot + off + 8, anchor: "middle" },
    { xPx: right + off, yPx: yPx + heightPx / 2 + 4, anchor: "start" },
    { xPx: xPx - off, yPx: yPx + heightPx / 2 + 4, anchor: "end" },
    { xPx: right + off / 2, yPx: yPx - off, anchor: "start" },
    { xPx: xPx - off / 2, yPx: yPx - off, anchor: "end" },
  ]);
}
