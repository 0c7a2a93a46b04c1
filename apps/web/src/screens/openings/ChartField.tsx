import type { ChartSide } from "@cornerway/engine";
import { chartVerdict } from "@cornerway/schema";
import { useEffect, useRef } from "react";
import { Lettering } from "../../drawing/label/Lettering.tsx";
import { linePath, polylinePath, px } from "../../drawing/px-path.ts";
import { hatchFill } from "../../look/hatch.ts";
import { ink, verdictInk, weight } from "../../look/ink.ts";
import { useUnits } from "../../units/use-units.ts";
import type { ChartPlace } from "../../worker/chart-messages.ts";
import { BearingStrokes, besideStrokes, strokeBoxes } from "./BearingStrokes.tsx";
import type { ChartFieldProps } from "./chart-field-props.ts";
import { chartRegions, type ChartRegion } from "./chart-regions.ts";
import type { ChartScale } from "./chart-scale.ts";
import { RegionNames } from "./RegionNames.tsx";
import { triedBox, triedWords } from "./tried-words.ts";
import { TakenGround } from "./TakenGround.tsx";
import { WallBelow } from "./WallBelow.tsx";

/** The chart standing on the wall it speaks of: place along, width up, regions by verdict. Everything in it is in the table too. */
export function ChartField(props: ChartFieldProps) {
  const { side, scale, widthPx, heightPx, label } = props;
  const svg = useTryByHand(props);
  const regions = chartRegions(props.columns, props.scale);
  return (
    <svg
      ref={svg}
      className="opening-chart"
      width={widthPx}
      height={heightPx}
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      role="img"
      aria-label={label}
    >
      <Axes {...props} />
      <Regions {...props} regions={regions} />
      <TakenGround {...props} />
      <PostLimits {...props} />
      <BearingStrokes side={side} scale={scale} tagOf={props.tagOf} />
      <RegionNames {...props} />
      <WallBelow {...props} />
      <TriedAndDrawn {...props} />
    </svg>
  );
}

/** A press on the chart tries that place; by keys the same is done with arrows and in the typed fields. */
function useTryByHand({ scale, side, onTry }: ChartFieldProps): React.RefObject<SVGSVGElement | null> {
  const svg = useRef<SVGSVGElement>(null);
  useEffect(() => {
    const drawing = svg.current;
    const press = (event: MouseEvent) => {
      const box = drawing?.getBoundingClientRect();
      const place = box && placeUnder(event.clientX - box.left, event.clientY - box.top, scale, side);
      if (place) onTry(place);
    };
    drawing?.addEventListener("click", press);
    return () => drawing?.removeEventListener("click", press);
  }, [scale, side, onTry]);
  return svg;
}

const STEP_MM = 50;

/** A place pressed on the chart, to the step; null off it. */
function placeUnder(xPx: number, yPx: number, scale: ChartScale, side: ChartSide): ChartPlace | null {
  if (yPx < scale.topPx || yPx > scale.basePx) return null;
  const snap = (mm: number): number => Math.round(mm / STEP_MM) * STEP_MM;
  const centreMm = snap((xPx - scale.leftPx) / scale.pxPerMm);
  const widthMm = snap(((scale.basePx - yPx) / (scale.basePx - scale.topPx)) * scale.mostMm);
  return centreMm <= 0 || centreMm >= side.lengthMm || widthMm <= 0 ? null : { centreMm, widthMm };
}

function Axes({ side, scale }: ChartFieldProps) {
  const metres = Array.from({ length: Math.floor(side.lengthMm / 1000) + 1 }, (_, n) => n);
  const widths = Array.from({ length: Math.floor(scale.mostMm / 500) + 1 }, (_, n) => n / 2);
  const every = Math.ceil(widths.length / 12);
  const right = scale.xPx(side.lengthMm);
  return (
    <g aria-hidden="true">
      {metres.map((m) => {
        const x = scale.xPx(m * 1000);
        const xPx = besideStrokes(x, side, scale);
        return (
          <g key={m}>
            <path d={linePath(x, scale.topPx, x, scale.basePx)} stroke="var(--ruling)" strokeWidth={weight.hair} />
            <Lettering
              text={String(m)}
              spot={{ xPx, yPx: scale.basePx + 15, anchor: "middle" }}
              sizePx={11}
              colour={ink.graphite}
            />
          </g>
        );
      })}
      {widths
        .filter((_, n) => n % every === 0)
        .map((m) => {
          const y = scale.yPx(m * 1000);
          return (
            <g key={m}>
              <path d={linePath(scale.leftPx, y, right, y)} stroke="var(--ruling)" strokeWidth={weight.hair} />
              <Lettering
                text={m.toFixed(1)}
                spot={{ xPx: scale.leftPx - 8, yPx: y + 4, anchor: "end" }}
                sizePx={11}
                colour={ink.graphite}
              />
            </g>
          );
        })}
      <path
        d={linePath(scale.leftPx, scale.basePx, right, scale.basePx)}
        stroke={ink.ink}
        strokeWidth={weight.profile}
      />
      <Lettering
        text="width of the opening, metres"
        spot={{ xPx: scale.leftPx - 8, yPx: scale.topPx - 42, anchor: "start" }}
        sizePx={11.5}
      />
      <Lettering
        text="centre of the opening, metres from the end"
        spot={{ xPx: right - 22, yPx: scale.basePx + 32, anchor: "end" }}
        sizePx={11.5}
      />
    </g>
  );
}

type RegionsProps = ChartFieldProps & { readonly regions: readonly ChartRegion[] };

function Regions({ columns, scale, under, regions }: RegionsProps) {
  return (
    <g aria-hidden="true">
      {regions.map(({ verdict, area, edge }) => {
        const said = chartVerdict(verdict, under);
        const colour = verdictInk[verdict];
        return (
          <g key={verdict}>
            <path d={area} fill={hatchFill(said, verdict === "does not work" ? "wide" : "normal", "pencil")} />
            <path
              d={edge}
              stroke={colour}
              strokeWidth={weight.edge}
              strokeDasharray={said === verdict ? undefined : "3 2.4"}
            />
          </g>
        );
      })}
      {columns.map(({ centreMm, stretches }) =>
        stretches
          .slice(1)
          .map(({ fromMm }) =>
            fromMm > scale.mostMm ? null : (
              <circle
                key={`${centreMm} ${fromMm}`}
                cx={px(scale.xPx(centreMm))}
                cy={px(scale.yPx(fromMm - STEP_MM / 2))}
                r={1.3}
                fill={ink.ink}
              />
            ),
          ),
      )}
    </g>
  );
}

/** Where the corner post itself would be cut, at either end. */
function PostLimits({ side, scale }: ChartFieldProps) {
  const line = (fromMm: number, sign: 1 | -1): string => {
    const most = Math.min(scale.mostMm, side.lengthMm);
    return polylinePath([
      { xPx: scale.xPx(fromMm), yPx: scale.basePx },
      { xPx: scale.xPx(fromMm + (sign * most) / 2), yPx: scale.yPx(most) },
    ]);
  };
  return (
    <path
      d={`${line(side.sheet.u0, 1)}${line(side.sheet.u1, -1)}`}
      fill="none"
      stroke={ink.ink}
      strokeWidth={weight.profile}
      aria-hidden="true"
    />
  );
}

function TriedAndDrawn({ side, scale, tried, drawn, tagOf }: ChartFieldProps) {
  const units = useUnits();
  const x = scale.xPx(tried.centreMm);
  const y = scale.yPx(tried.widthMm);
  const moved = drawn !== null && (drawn.place.centreMm !== tried.centreMm || drawn.place.widthMm !== tried.widthMm);
  const [from, to] = [tried.centreMm - tried.widthMm / 2, tried.centreMm + tried.widthMm / 2].map(scale.xPx);
  const words = triedWords(tried, moved ? null : drawn, units);
  const box = triedBox(words, { xPx: x, yPx: y }, strokeBoxes({ side, scale, tagOf }));
  return (
    <g aria-hidden="true">
      {moved && drawn !== null && (
        <path
          d={linePath(scale.xPx(drawn.place.centreMm), scale.yPx(drawn.place.widthMm), x, y)}
          stroke={ink.graphite}
          strokeWidth={weight.fine}
          strokeDasharray="3 2"
        />
      )}
      <path d={linePath(from ?? x, y, to ?? x, y)} stroke={ink.ink} strokeWidth={weight.profile} />
      <path
        d={`${linePath(from ?? x, y, from ?? x, scale.wallTopPx)}${linePath(to ?? x, y, to ?? x, scale.wallTopPx)}`}
        stroke={ink.graphite}
        strokeWidth={weight.fine}
        strokeDasharray="7 4"
      />
      <circle cx={px(x)} cy={px(y)} r={9} fill={ink.slip} stroke={ink.ink} strokeWidth={weight.edge} />
      <circle cx={px(x)} cy={px(y)} r={2.4} fill={ink.ink} />
      <g transform={`translate(${px((box.left + box.right) / 2)} ${px((box.top + box.bottom) / 2)})`}>
        <rect
          x={px((box.left - box.right) / 2)}
          y={-10.5}
          width={px(box.right - box.left)}
          height={21}
          fill={ink.slip}
          stroke={ink.ink}
          strokeWidth={weight.edge}
        />
        <text y={4} textAnchor="middle" className="tried-words">
          {words}
        </text>
      </g>
      {moved && drawn !== null && (
        <circle
          cx={px(scale.xPx(drawn.place.centreMm))}
          cy={px(scale.yPx(drawn.place.widthMm))}
          r={5}
          fill="none"
          stroke={ink.graphite}
          strokeWidth={weight.edge}
        />
      )}
    </g>
  );
}
