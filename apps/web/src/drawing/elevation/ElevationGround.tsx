import type { ElevationModel } from "@cornerway/engine";
import { DrawnElement } from "../DrawnElement.tsx";
import { PencilTree, ScaleFigure } from "../figures/ScaleFigures.tsx";
import { GroundLine } from "../ground/GroundLine.tsx";
import { PadSection } from "../ground/PadSection.tsx";
import { rectToPx, xToPx, yToPx } from "../paper-to-px.ts";
import { itemOf, type ElementSetting } from "../element-setting.ts";

/** Ground beyond the building on either side, px. */
const groundBeyondPx = 46;

/** The ground with its pads, and the people that give the scale. */
export function ElevationGround({
  model,
  figures,
  ...setting
}: { model: ElevationModel; figures: boolean } & ElementSetting) {
  const { view } = setting;
  const groundPx = yToPx(view, model.groundMm);
  const fromPx = xToPx(view, model.extent?.u0Mm ?? -6100) - groundBeyondPx;
  const toPx = xToPx(view, model.extent?.u1Mm ?? 6100) + groundBeyondPx;
  return (
    <>
      {figures && <Figures model={model} groundPx={groundPx} view={view} />}
      <GroundLine fromPx={fromPx} toPx={toPx} groundPx={groundPx} />
      {model.pads.map((place) => {
        const rect = rectToPx(view, place);
        return (
          <DrawnElement key={place.pad.id} {...itemOf(setting, place.pad.id, "pad")} rect={rect}>
            <PadSection rect={rect} seed={place.pad.id} behind={place.behind} />
          </DrawnElement>
        );
      })}
    </>
  );
}

type FigurePlace = { peopleMm: number; treeMm: number | null };

/** Ground free beside or under the building that is wide enough for two people, mm. */
const freeMm = 1900;

/**
 * People where an overhang or the ground leaves room, a tree on the other side; never over a member, never more than
 * three, and clear of the heights at the right.
 */
function figurePlace(model: ElevationModel): FigurePlace | null {
  if (model.extent === null) return null;
  const { u0Mm, u1Mm } = model.extent;
  const low = model.faces.filter(({ z0Mm }) => z0Mm < model.groundMm + 2500);
  const right = Math.max(...low.map((face) => face.u1Mm), u0Mm);
  const left = Math.min(...low.map((face) => face.u0Mm), u1Mm);
  if (low.length === 0) return { peopleMm: (u0Mm + u1Mm) / 2, treeMm: null };
  if (u1Mm - right > freeMm) return { peopleMm: right + (u1Mm - right) * 0.6, treeMm: left - 620 };
  if (left - u0Mm > freeMm) return { peopleMm: left - (left - u0Mm) * 0.6, treeMm: null };
  return { peopleMm: left - 650, treeMm: null };
}

function Figures({ model, groundPx, view }: { model: ElevationModel; groundPx: number; view: ElementSetting["view"] }) {
  const place = figurePlace(model);
  if (place === null) return null;
  const { pxPerM } = view;
  return (
    <g className="scale-figures">
      {place.treeMm !== null && (
        <PencilTree xPx={xToPx(view, place.treeMm)} groundPx={groundPx} pxPerM={pxPerM} tallM={2.2} />
      )}
      <ScaleFigure xPx={xToPx(view, place.peopleMm - 270)} groundPx={groundPx} pxPerM={pxPerM} />
      <ScaleFigure xPx={xToPx(view, place.peopleMm + 270)} groundPx={groundPx} pxPerM={pxPerM} tallM={1.64} />
    </g>
  );
}
