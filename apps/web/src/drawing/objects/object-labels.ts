import type { UnitSystem } from "@cornerway/schema";
import { ink } from "../../look/ink.ts";
import type { Label, Spot } from "../label/place-labels.ts";
import type { RectPx } from "../px-path.ts";
import type { ObjectEye } from "./object-eye.ts";
import { objectInk } from "./object-ink.ts";
import { atScale, type SeenObject } from "./seen-objects.ts";

export type ObjectLabel = Label & { kind: "object"; colour: string; fontWeight: number; trackingEm: number };

/** What is lettered beside added things: the labels of beams and seats, the figures of loads. */
export const objectLabels = (objects: readonly SeenObject[], eye: ObjectEye, units: UnitSystem): ObjectLabel[] =>
  atScale(objects, eye.pxPerM).flatMap(({ object, hidden }) => {
    const { rect, figure } = objectInk(object, eye, hidden, units);
    if (figure === null) return [];
    return [
      {
        key: `object-${object.id}`,
        text: figure,
        kind: "object",
        sizePx: 11,
        spots: spotsRound(rect),
        colour: object.kind === "load" ? ink.graphite : ink.prussian,
        fontWeight: 600,
        trackingEm: 0.02,
      },
    ];
  });

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
