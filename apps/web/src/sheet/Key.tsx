import { memo } from "react";
import { newtonsPerPound, type UnitSystem, type Verdict } from "@cornerway/schema";
import { hatchFill } from "../look/hatch.ts";
import { verdictInk, ink } from "../look/ink.ts";
import { VerdictSymbol } from "../look/VerdictSymbol.tsx";
import { verdictWords } from "../look/verdict-class.ts";
import { rulingPen } from "../drawing/stroke/ruling-pen.ts";
import { useUnits } from "../units/use-units.ts";
import { strokeWidthPx, widestForceKn } from "../drawing/stroke/stroke-width.ts";
import "./key.css";

const shown: readonly Verdict[] = ["works as built", "works with steel", "needs the engineer", "does not work"];
/** Strokes of the key, each in the unit forces are drawn in, and that unit in kN. */
const strokes: Record<UnitSystem, { unit: string; unitKn: number; forces: readonly number[] }> = {
  SI: { unit: "kN", unitKn: 1, forces: [25, 50, 100, 200] },
  US: { unit: "kip", unitKn: newtonsPerPound, forces: [5, 10, 20, 40] },
};

/** The key: each verdict's hatch, shape and word, and four strokes at the scale of the elevation. Never left out. */
export const Key = memo(function Key({ pxPerM }: { pxPerM: number }) {
  const { unit, unitKn, forces } = strokes[useUnits()];
  return (
    <section className="key" aria-label="Key">
      <h2 className="caption">Key</h2>
      <ul>
        {shown.map((verdict) => (
          <li key={verdict}>
            <svg width="26" height="12" aria-hidden="true">
              <rect
                x="0.5"
                y="0.5"
                width="25"
                height="11"
                fill={hatchFill(verdict, "small")}
                stroke={verdictInk[verdict]}
              />
            </svg>
            <VerdictSymbol verdict={verdict} sizePx={13} />
            {verdictWords(verdict)}
          </li>
        ))}
      </ul>
      <figure>
        <svg width="146" height="42" role="img" aria-label={`Stroke widths for ${forces.join(", ")} ${unit}`}>
          {forces.map((force, index) => (
            <g key={force}>
              <path d={keyStroke(force * unitKn, index, pxPerM)} fill={ink.ink} fillOpacity={0.94} />
              <text x={strokeX(index)} y="39" textAnchor="middle" fontSize="11" fill={ink.graphite}>
                {force}
              </text>
            </g>
          ))}
          <text x="130" y="39" fontSize="11" fill={ink.graphite}>
            {unit}
          </text>
        </svg>
        <figcaption>
          over {Math.round(widestForceKn(pxPerM) / unitKn)} {unit} the width stops
        </figcaption>
      </figure>
    </section>
  );
});

const strokeX = (index: number): number => 12 + index * 34;

function keyStroke(forceKn: number, index: number, pxPerM: number): string {
  const width = strokeWidthPx(forceKn, pxPerM);
  return rulingPen(
    {
      from: { xPx: strokeX(index), yPx: 2 },
      to: { xPx: strokeX(index), yPx: 26 },
      widthFromPx: width,
      widthToPx: width,
    },
    `key-${forceKn}`,
  );
}
