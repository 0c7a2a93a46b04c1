import type { ElevationModel } from "@cornerway/engine";
import { DrawnElement } from "../DrawnElement.tsx";
import { PencilTree, ScaleFigure } from "../figures/ScaleFigures.tsx";
import { GroundLine } from "../ground/GroundLine.tsx";
import { PadSection } from "../ground/PadSection.tsx";
import { rectToPx, xToPx, yToPx } from "../paper-to-px.ts";
import { itemOf, type ElementSetting } from "../element-setting.ts";
import { figurePlace } from "./figure-place.ts";

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

function Figures({ model, groundPx, view }: { model: ElevationModel; groundPx: number; view: ElementSetting["view"] }) {
  const place = figurePlace(model, view);
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
