import type { Crossing } from "@cornerway/engine";
import type { UnitSystem } from "@cornerway/schema";
import type { LayerLabel } from "../drawing/contract.ts";
import { forceFigure } from "../drawing/stroke/stroke-run.ts";
import { strokeWidthPx } from "../drawing/stroke/stroke-width.ts";
import { project, toScreen, type ViewTransform } from "../drawing/view-transform.ts";
import { ink } from "../look/ink.ts";

/** Px between a round and its figure. */
const asidePx = 4;
/** A strand's share stands in the margin once for all; only posts bear figures. */
const isPost = ({ id }: Crossing): boolean => id.startsWith("corner:") || id.startsWith("post:");

/** The force in each post a plan cuts, beside its round where there is room, the greatest first. */
export const cutFigures = (crossings: readonly Crossing[], view: ViewTransform, units: UnitSystem): LayerLabel[] =>
  crossings
    .filter(isPost)
    .toSorted((a, b) => Math.abs(b.forceKn) - Math.abs(a.forceKn))
    .map(({ id, at, forceKn }): LayerLabel => {
      const { xPx, yPx } = toScreen(view, project("plan", at));
      const off = strokeWidthPx(Math.abs(forceKn), view.pxPerM) / 2 + asidePx;
      return {
        key: `cut-${id}`,
        text: forceFigure(forceKn, units),
        sizePx: 11,
        colour: id.startsWith("post:") ? ink.prussian : ink.ink,
        fontWeight: 500,
        spots: [
          { xPx: xPx + off, yPx: yPx + 13, anchor: "start" },
          { xPx: xPx - off, yPx: yPx + 13, anchor: "end" },
          { xPx: xPx + off, yPx: yPx - 5, anchor: "start" },
          { xPx: xPx - off, yPx: yPx - 5, anchor: "end" },
        ],
      };
    });
