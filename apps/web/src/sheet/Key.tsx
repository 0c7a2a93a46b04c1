import { memo } from "react";
import type { Verdict } from "@cornerway/schema";
import { hatchFill } from "../look/hatch.ts";
import { verdictInk, ink } from "../look/ink.ts";
import { VerdictSymbol } from "../look/VerdictSymbol.tsx";
import { verdictWords } from "../look/verdict-class.ts";
import { rulingPen } from "../drawing/stroke/ruling-pen.ts";
import { strokeWidthPx, widestForceKn } from "../drawing/stroke/stroke-width.ts";
import "./key.css";

const shown: readonly Verdict[] = ["works as built", "works with steel", "needs the engineer", "does not work"];
const forcesKn = [25, 50, 100, 200] as const;

/** The key: each verdict's hatch, shape and word, and four strokes at the scale of the elevation. Never left out. */
export const Key = memo(function Key({ pxPerM }: { pxPerM: number }) {
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
        <svg width="146" height="42" role="img" aria-label={`Stroke widths for ${forcesKn.join(", ")} kN`}>
          {forcesKn.map((force, index) => (
            <g key={force}>
              <path d={keyStroke(force, index, pxPerM)} fill={ink.ink} opacity={0.94} />
              <text x={strokeX(index)} y="39" textAnchor="middle" fontSize="11" fill={ink.graphite}>
                {force}
              </text>
            </g>
          ))}
          <text x="130" y="39" fontSize="11" fill={ink.graphite}>
            kN
          </text>
        </svg>
        <figcaption>over {Math.round(widestForceKn(pxPerM))} kN the width stops</figcaption>
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
