import { ink } from "../../look/ink.ts";
import { DimensionString } from "../dimension/DimensionString.tsx";
import { Lettering } from "../label/Lettering.tsx";
import { textWidthPx } from "../label/text-width.ts";
import { rectToPx, xToPx, yToPx } from "../paper-to-px.ts";
import type { ViewTransform } from "../view-transform.ts";
import type { FaceDimensions } from "./unfolded-dimensions.ts";
import type { FlatFace } from "./unfolded-model.ts";

type Props = { dimensions: { along: FaceDimensions; up: FaceDimensions | null }; flat: FlatFace; view: ViewTransform };

const asidePx = 18;
const sizePx = 11;

/** The strings beside a face: along its foot, and up its right edge. */
export function FaceDimensionStrings({ dimensions: { along, up }, flat, view }: Props) {
  const rect = rectToPx(view, flat.outline);
  const foot = rect.yPx + rect.heightPx + asidePx;
  const right = rect.xPx + rect.widthPx + asidePx;
  return (
    <g aria-hidden="true" pointerEvents="none">
      <DimensionString placesPx={along.placesMm.map((at) => xToPx(view, at))} atPx={foot} />
      {along.segments.map(({ fromMm, toMm, text }, at) => {
        const room = Math.abs(xToPx(view, toMm) - xToPx(view, fromMm));
        const low = textWidthPx(text, sizePx) > room && at % 2 === 1;
        return (
          <Lettering
            key={fromMm}
            text={text}
            spot={{ xPx: xToPx(view, (fromMm + toMm) / 2), yPx: foot + (low ? 13 : -4), anchor: "middle" }}
            sizePx={sizePx}
            colour={ink.graphite}
            fontWeight={400}
          />
        );
      })}
      {up !== null && <DimensionString upright placesPx={up.placesMm.map((at) => yToPx(view, at))} atPx={right} />}
      {up?.segments.map(({ fromMm, toMm, text }) => (
        <Lettering
          key={fromMm}
          text={text}
          spot={{ xPx: right - 4, yPx: yToPx(view, (fromMm + toMm) / 2), anchor: "middle", turned: true }}
          sizePx={sizePx}
          colour={ink.graphite}
          fontWeight={400}
        />
      ))}
    </g>
  );
}
