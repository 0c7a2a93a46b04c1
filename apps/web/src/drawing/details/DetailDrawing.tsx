import type { Detail, DetailPart } from "@cornerway/engine";
import type { UnitSystem } from "@cornerway/schema";
import { hatchFill, pencilFill } from "../../look/hatch.ts";
import { ink, weight } from "../../look/ink.ts";
import { drawnLength } from "../../units/drawn-length.ts";
import { DimensionString } from "../dimension/DimensionString.tsx";
import { PadSection } from "../ground/PadSection.tsx";
import { Lettering } from "../label/Lettering.tsx";
import { placeLabels } from "../label/place-labels.ts";
import { rectToPx, xToPx, yToPx } from "../paper-to-px.ts";
import { linePath, px, rectPath, type RectPx } from "../px-path.ts";
import type { ViewTransform } from "../view-transform.ts";

/** One detail: steel that is added in prussian, the container's own hatched in ink, concrete; notes to the right. */
export function DetailDrawing({ detail, view, units }: { detail: Detail; view: ViewTransform; units: UnitSystem }) {
  const right = Math.max(...detail.parts.map(({ u1Mm }) => xToPx(view, u1Mm)));
  return (
    <>
      {detail.parts.map((part, at) => (
        <PartDrawing key={at} part={part} view={view} />
      ))}
      {detail.welds.map(({ uMm, zMm, legMm }) => (
        <WeldSymbol key={`${uMm} ${zMm}`} xPx={xToPx(view, uMm)} yPx={yToPx(view, zMm)} legMm={legMm} />
      ))}
      <Notes detail={detail} view={view} fromPx={right + 26} />
      {detail.heights.map(({ fromMm, toMm, atMm }) => {
        const x = Math.min(...detail.parts.map(({ u0Mm }) => xToPx(view, u0Mm))) - 16;
        const [y0, y1] = [yToPx(view, fromMm), yToPx(view, toMm)];
        return (
          <g key={`${fromMm} ${toMm} ${atMm}`}>
            <DimensionString upright placesPx={[y0, y1]} atPx={x} />
            <Lettering
              text={drawnLength(toMm - fromMm, units)}
              spot={{ xPx: x - 6, yPx: (y0 + y1) / 2, anchor: "middle", turned: true }}
              sizePx={11}
              colour={ink.graphite}
              fontWeight={400}
            />
          </g>
        );
      })}
    </>
  );
}

function PartDrawing({ part, view }: { part: DetailPart; view: ViewTransform }) {
  const rect = rectToPx(view, part);
  const d = rectPath(rect);
  switch (part.what) {
    case "added steel":
      return (
        <>
          <path d={d} fill={ink.paper} />
          <path d={d} fill={hatchFill("works with steel", "small")} stroke={ink.prussian} strokeWidth={weight.edge} />
        </>
      );
    case "plate":
      return <path d={d} fill={ink.prussian} stroke={ink.prussian} strokeWidth={weight.edge} />;
    case "anchor":
      return <AnchorDrawing rect={rect} />;
    case "container steel":
      return (
        <>
          <path d={d} fill={ink.paper} />
          <path d={d} fill={pencilFill.close} stroke={ink.ink} strokeWidth={weight.profile} />
        </>
      );
    case "concrete":
      return <PadSection rect={rect} seed={part.name} />;
  }
}

/** A shank with its nut above and its head below. */
function AnchorDrawing({ rect: { xPx, yPx, widthPx, heightPx } }: { rect: RectPx }) {
  const wide = Math.max(widthPx, leastAnchorPx);
  const middle = xPx + widthPx / 2;
  const cap = (y: number) => rectPath({ xPx: middle - wide, yPx: y - wide / 2, widthPx: 2 * wide, heightPx: wide });
  return (
    <path
      d={rectPath({ xPx: middle - wide / 2, yPx, widthPx: wide, heightPx }) + cap(yPx) + cap(yPx + heightPx)}
      fill={ink.paper}
      stroke={ink.prussian}
      strokeWidth={weight.edge}
    />
  );
}

const leastAnchorPx = 2.4;

/** A fillet weld all round (ISO 2553, from memory): arrow to its root, a circle at the knee, the leg in mm before its sign. */
function WeldSymbol({ xPx, yPx, legMm }: { xPx: number; yPx: number; legMm: number }) {
  const [kneeX, kneeY] = [xPx - 34, yPx - 26];
  const flag = kneeX - 34;
  return (
    <g fill="none" stroke={ink.ink} strokeWidth={weight.fine}>
      <path d={`M${px(xPx)} ${px(yPx)}L${px(kneeX)} ${px(kneeY)}H${px(flag)}`} />
      <path d={`M${px(flag + 14)} ${px(kneeY)}v9l9 -9`} />
      <circle cx={px(kneeX)} cy={px(kneeY)} r={3} fill={ink.paper} />
      <circle cx={px(xPx)} cy={px(yPx)} r={1.6} fill={ink.ink} />
      <g stroke="none">
        <Lettering
          text={`${legMm}`}
          spot={{ xPx: flag + 10, yPx: kneeY - 4, anchor: "end" }}
          sizePx={11}
          colour={ink.ink}
        />
      </g>
    </g>
  );
}

/** What each part is, once for each name, level with it, with a leader to its edge. */
function Notes({ detail, view, fromPx }: { detail: Detail; view: ViewTransform; fromPx: number }) {
  const names = [...new Map(detail.parts.map((part) => [part.name, part])).values()];
  const labels = placeLabels(
    names.map((part) => {
      const y = yToPx(view, (part.z0Mm + part.z1Mm) / 2);
      return {
        ...{ key: part.name, text: part.name, sizePx: 11, part },
        spots: [0, 16, -16, 32, -32].map((off) => ({ xPx: fromPx, yPx: y + off + 4, anchor: "start" as const })),
      };
    }),
    [],
  );
  return labels.map(({ key, text, spot, part }) => {
    const edge = { x: xToPx(view, part.u1Mm), y: yToPx(view, (part.z0Mm + part.z1Mm) / 2) };
    return (
      <g key={key}>
        <path
          d={linePath(spot.xPx - 4, spot.yPx - 4, edge.x, edge.y)}
          stroke={ink.graphite}
          strokeWidth={weight.fine}
          pointerEvents="none"
        />
        <circle cx={px(edge.x)} cy={px(edge.y)} r={1.6} fill={ink.graphite} />
        <Lettering
          text={text}
          spot={spot}
          sizePx={11}
          colour={part.what === "container steel" || part.what === "concrete" ? ink.ink : ink.prussian}
        />
      </g>
    );
  });
}
