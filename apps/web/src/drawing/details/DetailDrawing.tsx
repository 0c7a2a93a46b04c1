import type { Detail, DetailPart, DetailWeld } from "@cornerway/engine";
import { figuresIn, type UnitSystem } from "@cornerway/schema";
import { hatchFill, pencilFill } from "../../look/hatch.ts";
import { dash, ink, weight } from "../../look/ink.ts";
import { drawnLength } from "../../units/drawn-length.ts";
import { detailNotes, noteLinePx, noteSizePx } from "./detail-notes.ts";
import { DimensionString } from "../dimension/DimensionString.tsx";
import { PadSection } from "../ground/PadSection.tsx";
import { Lettering } from "../label/Lettering.tsx";
import { rectToPx, xToPx, yToPx } from "../paper-to-px.ts";
import { linePath, polygonPath, px, rectPath, type RectPx } from "../px-path.ts";
import type { ScreenPoint, ViewTransform } from "../view-transform.ts";

/** One detail: steel that is added in prussian, the container's own hatched in ink, concrete; notes to the right. */
export function DetailDrawing({ detail, view, units }: { detail: Detail; view: ViewTransform; units: UnitSystem }) {
  const right = Math.max(...detail.parts.map(({ u1Mm }) => xToPx(view, u1Mm)));
  return (
    <>
      {detail.parts.map((part, at) => (
        <PartDrawing key={at} part={part} view={view} />
      ))}
      {detail.welds.map((weld) => (
        <WeldSymbol
          key={`${weld.uMm} ${weld.zMm}`}
          at={{ xPx: xToPx(view, weld.uMm), yPx: yToPx(view, weld.zMm) }}
          weld={weld}
          units={units}
        />
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
  const d =
    part.outline === undefined
      ? rectPath(rect)
      : polygonPath(part.outline.map(({ uMm, zMm }) => ({ xPx: xToPx(view, uMm), yPx: yToPx(view, zMm) })));
  const thin = part.outline !== undefined || Math.min(rect.widthPx, rect.heightPx) < leastHatchedPx;
  switch (part.what) {
    case "added steel":
      return thin ? (
        <path d={d} fill={ink.prussian} stroke={ink.prussian} strokeWidth={weight.hair} />
      ) : (
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
      return thin ? (
        <path d={d} fill={ink.ink} stroke={ink.ink} strokeWidth={weight.hair} />
      ) : (
        <>
          <path d={d} fill={ink.paper} />
          <path d={d} fill={pencilFill.close} stroke={ink.ink} strokeWidth={weight.profile} />
        </>
      );
    case "device":
      return <path d={d} fill="none" stroke={ink.prussian} strokeWidth={weight.edge} strokeDasharray={dash.hidden} />;
    case "concrete":
      return <PadSection rect={rect} seed={part.name} />;
  }
}

/** Steel that is cut thinner than this is inked solid, px: no hatch is read in it. */
const leastHatchedPx = 9;

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

interface WeldSymbolProps {
  at: ScreenPoint;
  weld: DetailWeld;
  units: UnitSystem;
}

/**
 * A fillet weld (AWS A2.4 and ISO 2553, from memory): arrow to its root; under the line its triangle, upright side left, over
 * it as well where the far side has one; its leg before, its length after; a circle at the knee where it runs all round.
 */
function WeldSymbol({ at: { xPx, yPx }, weld: { legMm, around, bothSides, lengthMm }, units }: WeldSymbolProps) {
  const { small } = figuresIn(units);
  const [kneeX, kneeY] = [xPx - 34, yPx - 26];
  const flag = kneeX - (lengthMm === undefined ? 34 : 58);
  const sign = flag + 18;
  const figure = { sizePx: 11, colour: ink.ink };
  return (
    <g fill="none" stroke={ink.ink} strokeWidth={weight.fine}>
      <path d={`M${px(xPx)} ${px(yPx)}L${px(kneeX)} ${px(kneeY)}H${px(flag)}`} />
      <path d={`M${px(sign)} ${px(kneeY)}v9l9 -9`} />
      {bothSides === true && <path d={`M${px(sign)} ${px(kneeY)}v-9l9 9`} />}
      {around && <circle cx={px(kneeX)} cy={px(kneeY)} r={3} fill={ink.paper} />}
      <circle cx={px(xPx)} cy={px(yPx)} r={1.6} fill={ink.ink} />
      <g stroke="none">
        <Lettering text={bare(small(legMm))} spot={{ xPx: sign - 4, yPx: kneeY + 11, anchor: "end" }} {...figure} />
        {lengthMm === undefined ? null : (
          <Lettering
            text={bare(small(lengthMm))}
            spot={{ xPx: sign + 13, yPx: kneeY + 11, anchor: "start" }}
            {...figure}
          />
        )}
      </g>
    </g>
  );
}

/** A figure on a drawing is of the unit of its drawing, and says none. */
const bare = (figure: string): string => figure.replace(/ mm$/, "");

/** What each part is, once for each name, level with it, with a leader to its edge. */
function Notes({ detail, view, fromPx }: { detail: Detail; view: ViewTransform; fromPx: number }) {
  const names = [...new Map(detail.parts.map((part) => [part.name, part])).values()];
  const middlePx = ({ z0Mm, z1Mm }: DetailPart) => yToPx(view, (z0Mm + z1Mm) / 2);
  const footPx = Math.max(...detail.parts.map(({ z0Mm }) => yToPx(view, z0Mm))) + noteLinePx;
  return detailNotes(
    names.map((part) => ({ part, yPx: middlePx(part) })),
    footPx,
  ).map(({ part, lines, yPx }) => {
    const edge = { x: xToPx(view, part.u1Mm), y: middlePx(part) };
    return (
      <g key={part.name}>
        <path
          d={linePath(fromPx - 4, yPx - 4, edge.x, edge.y)}
          stroke={ink.graphite}
          strokeWidth={weight.fine}
          pointerEvents="none"
        />
        <circle cx={px(edge.x)} cy={px(edge.y)} r={1.6} fill={ink.graphite} />
        {lines.map((line, at) => (
          <Lettering
            key={line}
            text={line}
            spot={{ xPx: fromPx, yPx: yPx + at * noteLinePx, anchor: "start" }}
            sizePx={noteSizePx}
            colour={part.what === "container steel" || part.what === "concrete" ? ink.ink : ink.prussian}
          />
        ))}
      </g>
    );
  });
}
