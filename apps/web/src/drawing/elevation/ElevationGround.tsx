import { DrawnElement } from "../DrawnElement.tsx";
import { PencilTree, ScaleFigure } from "../figures/ScaleFigures.tsx";
import { GroundLine } from "../ground/GroundLine.tsx";
import { PadSection } from "../ground/PadSection.tsx";
import { rectToPx, xToPx, yToPx } from "../paper-to-px.ts";
import type { ElementSetting } from "./ElevationUnit.tsx";
import type { ElevationModel } from "./elevation-model.ts";

/** Ground beyond the building on either side, px. */
export const groundBeyondPx = 46;

/** The ground with its pads, and the people that give the scale. */
export function ElevationGround({ model, figures, ...setting }: { model: ElevationModel; figures: boolean } & ElementSetting) {
  const { view, nameOf, selectedId, entryId } = setting;
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
          <DrawnElement
            key={place.pad.id}
            id={place.pad.id}
            kind="pad"
            label={nameOf(place.pad.id)}
            level={1}
            selected={selectedId === place.pad.id}
            entry={entryId === place.pad.id}
            rect={rect}
          >
            <PadSection rect={rect} seed={place.pad.id} />
          </DrawnElement>
        );
      })}
    </>
  );
}

/** Two people where the ground is free, a tree at the other end; never over a member, never more than three. */
function Figures({ model, groundPx, view }: { model: ElevationModel; groundPx: number; view: ElementSetting["view"] }) {
  if (model.extent === null) return null;
  const low = model.faces.filter(({ z0Mm }) => z0Mm < model.groundMm + 2500);
  const right = xToPx(view, Math.max(...low.map(({ u1Mm }) => u1Mm), model.extent.u0Mm));
  const left = xToPx(view, Math.min(...low.map(({ u0Mm }) => u0Mm), model.extent.u1Mm));
  const { pxPerM } = view;
  return (
    <>
      <PencilTree xPx={left - 0.75 * pxPerM} groundPx={groundPx} pxPerM={pxPerM} tallM={2.6} />
      <ScaleFigure xPx={right + 0.62 * pxPerM} groundPx={groundPx} pxPerM={pxPerM} />
      <ScaleFigure xPx={right + 1.16 * pxPerM} groundPx={groundPx} pxPerM={pxPerM} tallM={1.64} />
    </>
  );
}
