import { memo } from "react";
import { mmPerInch, type UnitSystem } from "@cornerway/schema";
import { ink, weight } from "../look/ink.ts";
import { px } from "./px-path.ts";

/** Lengths a scale bar may show, in metres or feet. */
const lengths = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100];
const mmPerUnit: Record<UnitSystem, number> = { SI: 1000, US: mmPerInch * 12 };
const unitWord: Record<UnitSystem, string> = { SI: "m", US: "ft" };

/** The longest round length that is drawn no longer than this, and how long it is drawn. */
export function barLength(
  pxPerM: number,
  units: UnitSystem,
  mostPx: number,
): { length: number; longPx: number } | null {
  const pxPerUnit = (mmPerUnit[units] * pxPerM) / 1000;
  const length = lengths.findLast((each) => each * pxPerUnit <= mostPx);
  return length === undefined ? null : { length, longPx: length * pxPerUnit };
}

type ScaleBarProps = { pxPerM: number; units: UnitSystem; xPx: number; yPx: number; mostPx: number };

/** A ruled length beside a view's title, half of it filled; it follows the scale the view is drawn at. */
export const ScaleBar = memo(function ScaleBar({ pxPerM, units, xPx, yPx, mostPx }: ScaleBarProps) {
  const bar = barLength(pxPerM, units, mostPx);
  if (bar === null) return null;
  const { length, longPx } = bar;
  const label = `${length} ${unitWord[units]}`;
  return (
    <g className="scale-bar" role="img" aria-label={`Scale bar, ${label}`}>
      <rect
        x={px(xPx)}
        y={px(yPx - 5)}
        width={px(longPx)}
        height="5"
        fill={ink.paper}
        stroke={ink.ink}
        strokeWidth={weight.fine}
      />
      <rect x={px(xPx)} y={px(yPx - 5)} width={px(longPx / 2)} height="5" fill={ink.ink} />
      <text x={px(xPx + longPx + 5)} y={px(yPx)} fontSize={11} fill={ink.graphite}>
        {label}
      </text>
    </g>
  );
});
