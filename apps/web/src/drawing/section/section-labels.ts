import type { Level, SectionModel } from "@cornerway/engine";
import type { UnitSystem } from "@cornerway/schema";
import { ink } from "../../look/ink.ts";
import { drawnLength } from "../../units/drawn-length.ts";
import { dimensionChain } from "../dimension/dimension-chain.ts";
import { placeLabels, sharedArea, type BoxPx, type Label, type Placed } from "../label/place-labels.ts";
import { rectToPx, yToPx } from "../paper-to-px.ts";
import type { ViewTransform } from "../view-transform.ts";

export type SectionLabel = Placed<Label & { colour: string; fontWeight: number }>;

/** Px from the building to the line its heights are written on. */
export const heightRowPx = 26;

/** Names of the units cut with their clear height, names of those beyond where they are free, heights of the levels. */
export function sectionLabels(
  model: SectionModel,
  levels: readonly Level[],
  view: ViewTransform,
  rightPx: number,
  units: UnitSystem,
  inked: readonly BoxPx[] = [],
): SectionLabel[] {
  const heights = dimensionChain(
    levels.map(({ zMm }) => zMm),
    units,
  ).map(({ fromMm, toMm, text }) => ({
    ...{ key: `height-${fromMm}`, text, sizePx: 11, colour: ink.graphite, fontWeight: 400 },
    spots: [
      {
        xPx: rightPx + heightRowPx - 5,
        yPx: (yToPx(view, fromMm) + yToPx(view, toMm)) / 2,
        anchor: "middle" as const,
        turned: true,
      },
    ],
  }));
  const cuts = model.cuts.flatMap((cut) => {
    const { xPx, yPx, widthPx, heightPx } = rectToPx(view, cut);
    const at = (rise: number) =>
      [0, -12, 12].map((off) => ({
        ...{ xPx: xPx + widthPx / 2, yPx: yPx + heightPx / 2 + rise + off, anchor: "middle" as const },
      }));
    const tag = { key: `cut-${cut.placed.id}`, text: cut.placed.container.tag, sizePx: 13, spots: at(0) };
    const clear = { key: `clear-${cut.placed.id}`, text: `${drawnLength(cut.ceilingMm - cut.floorMm, units)} clear` };
    const roomy = widthPx > 78 && heightPx > 54;
    return [
      { ...tag, colour: ink.ink, fontWeight: 600 },
      ...(roomy ? [{ ...clear, sizePx: 11, spots: at(15), colour: ink.graphite, fontWeight: 400 }] : []),
    ];
  });
  const hidden = model.cuts.map((cut) => boxOf(cut, view));
  const beyond = model.beyond.flatMap((face, index) => {
    const box = boxOf(face, view);
    const nearer = [...hidden, ...model.beyond.slice(index + 1).map((each) => boxOf(each, view))];
    if (box.right - box.left < 30 || nearer.some((other) => sharedArea(box, other) > 0)) return [];
    const spots = [{ xPx: (box.left + box.right) / 2, yPx: (box.top + box.bottom) / 2, anchor: "middle" as const }];
    return [
      {
        ...{ key: `beyond-${face.placed.id}`, text: face.placed.container.tag, sizePx: 12, spots },
        ...{ colour: ink.graphite, fontWeight: 500 },
      },
    ];
  });
  return placeLabels([...cuts, ...heights, ...beyond], inked);
}

function boxOf(rect: Parameters<typeof rectToPx>[1], view: ViewTransform): BoxPx {
  const { xPx, yPx, widthPx, heightPx } = rectToPx(view, rect);
  return { left: xPx, top: yPx, right: xPx + widthPx, bottom: yPx + heightPx };
}
