import { chartVerdict, type UnitSystem, type Verdict } from "@cornerway/schema";
import { boxAround, labelBox, type BoxPx } from "../../drawing/label/place-labels.ts";
import { linePath, px } from "../../drawing/px-path.ts";
import { ink, weight } from "../../look/ink.ts";
import { VerdictSymbol } from "../../look/VerdictSymbol.tsx";
import { verdictWords } from "../../look/verdict-class.ts";
import { useUnits } from "../../units/use-units.ts";
import { bearingFigure, bearingWidthPx } from "./BearingStrokes.tsx";
import type { ChartFieldProps } from "./chart-field-props.ts";
import { regionNames, symbolRoomPx } from "./region-names.ts";
import { triedBox, triedWords } from "./tried-words.ts";

/** The verdicts of the regions in words: within them, or beside with a leader. */
export function RegionNames(props: ChartFieldProps) {
  const { columns, scale, side, under } = props;
  const units = useUnits();
  const kept = keptClear(props, units);
  const wordsOf = (verdict: Verdict) =>
    chartVerdict(verdict, under) === verdict ? verdictWords(verdict) : `${verdictWords(verdict)}, gravity alone`;
  return (
    <g aria-hidden="true">
      {regionNames({ columns, scale, rightPx: scale.xPx(side.lengthMm), wordsOf, kept }).map((name) => (
        <g key={name.verdict} className={`region-name verdict-${name.verdict.replaceAll(" ", "-")}`}>
          {name.tip !== null && (
            <>
              <path
                d={linePath(name.xPx + symbolRoomPx / 2, name.yPx + 8, name.tip.xPx, name.tip.yPx)}
                stroke={ink.ink}
                strokeWidth={weight.fine}
              />
              <circle cx={px(name.tip.xPx)} cy={px(name.tip.yPx)} r={2.4} fill={ink.ink} />
            </>
          )}
          <g transform={`translate(${px(name.xPx)} ${px(name.yPx - 9)})`}>
            <VerdictSymbol verdict={chartVerdict(name.verdict, under)} />
          </g>
          <text x={px(name.xPx + symbolRoomPx)} y={px(name.yPx + 4.5)} className="region-word">
            {name.words}
          </text>
        </g>
      ))}
    </g>
  );
}

/** Names keep off what is tried and its words, the strokes that come down with their figures, and the tags of openings. */
function keptClear({ side, scale, tried, drawn, tagOf }: ChartFieldProps, units: UnitSystem): BoxPx[] {
  const at = { xPx: scale.xPx(tried.centreMm), yPx: scale.yPx(tried.widthMm) };
  const strokes = side.bearings
    .filter((bearing) => bearing.at === "above")
    .flatMap((bearing): BoxPx[] => {
      const half = bearingWidthPx(bearing, scale) / 2;
      const x = scale.xPx(bearing.uMm);
      const { text, spot, sizePx } = bearingFigure(bearing, side, scale, tagOf);
      return [{ left: x - half, right: x + half, top: 0, bottom: scale.wallTopPx }, labelBox(text, sizePx, spot)];
    });
  const tags = side.others.map(({ offsetUm, widthUm }) =>
    boxAround(scale.xPx((offsetUm + widthUm / 2) / 1000), scale.basePx - 18, 16, 12),
  );
  return [boxAround(at.xPx, at.yPx, 12, 12), triedBox(triedWords(tried, drawn, units), at), ...strokes, ...tags];
}
