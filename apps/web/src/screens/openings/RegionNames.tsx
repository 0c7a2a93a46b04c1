import { chartVerdict, type UnitSystem, type Verdict } from "@cornerway/schema";
import { boxAround, type BoxPx } from "../../drawing/label/place-labels.ts";
import { textWidthPx } from "../../drawing/label/text-width.ts";
import { linePath, px } from "../../drawing/px-path.ts";
import type { ScreenPoint } from "../../drawing/view-transform.ts";
import { ink, weight } from "../../look/ink.ts";
import { VerdictSymbol } from "../../look/VerdictSymbol.tsx";
import { verdictWords } from "../../look/verdict-class.ts";
import { useUnits } from "../../units/use-units.ts";
import { strokeBoxes } from "./BearingStrokes.tsx";
import type { ChartFieldProps } from "./chart-field-props.ts";
import { regionNames, regionNameSizePx, symbolRoomPx, type RegionName } from "./region-names.ts";
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
                d={linePath(...leaderFrom(name, name.tip), name.tip.xPx, name.tip.yPx)}
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

/** A leader leaves the end of a name that is nearer to its tip; one that lies below it, from under its symbol. */
function leaderFrom({ xPx, yPx, words }: RegionName, tip: ScreenPoint): [number, number] {
  const right = xPx + symbolRoomPx + textWidthPx(words, regionNameSizePx) + 3;
  if (tip.xPx > right) return [right, yPx];
  return tip.xPx < xPx ? [xPx - 3, yPx] : [xPx + symbolRoomPx / 2, yPx + 8];
}

/** Names keep off what is tried and its words, the strokes that come down with their figures, and the tags of openings. */
function keptClear(props: ChartFieldProps, units: UnitSystem): BoxPx[] {
  const { side, scale, tried, drawn } = props;
  const at = { xPx: scale.xPx(tried.centreMm), yPx: scale.yPx(tried.widthMm) };
  const strokes = strokeBoxes(props);
  const tags = side.others.map(({ offsetUm, widthUm }) =>
    boxAround(scale.xPx((offsetUm + widthUm / 2) / 1000), scale.basePx - 18, 16, 12),
  );
  const words = triedBox(triedWords(tried, drawn, units), at, strokes);
  return [boxAround(at.xPx, at.yPx, 12, 12), words, ...strokes, ...tags];
}
