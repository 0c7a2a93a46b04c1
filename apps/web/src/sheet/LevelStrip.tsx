import { spreadApart } from "../drawing/grid/spread-apart.ts";
import { drawnLevel } from "../units/drawn-length.ts";
import { useUnits } from "../units/use-units.ts";
import type { LevelStripProps } from "./contract.ts";
import "./level-strip.css";

/** Least distance between two level marks' lettering, px. */
const leastApartPx = 32;

/** Level marks at the true height of the elevation beside them. Choosing one cuts the plan there. */
export function LevelStrip({ levels, chosenStorey, onChoose }: LevelStripProps) {
  const units = useUnits();
  const rising = levels.toSorted((a, b) => a.yPx - b.yPx);
  const places = spreadApart(
    rising.map(({ yPx }) => yPx),
    leastApartPx,
  );
  return (
    <nav className="level-strip" aria-label="Levels">
      <h2 className="caption">Levels</h2>
      <svg className="level-lines" aria-hidden="true">
        {rising.map(({ name, yPx }, index) => (
          <path
            key={name}
            d={`M6 ${places[index] ?? yPx}H52L60 ${yPx}H66`}
            fill="none"
            stroke="var(--graphite-2)"
            strokeWidth="0.6"
            strokeDasharray="16 3 3 3"
          />
        ))}
      </svg>
      {rising.map(({ storey, name, zMm, yPx }, index) => (
        <button
          type="button"
          key={name}
          className="level-mark"
          aria-pressed={storey === null ? undefined : storey === chosenStorey}
          disabled={storey === null}
          style={{ top: `${places[index] ?? yPx}px` }}
          onClick={() => {
            if (storey !== null) onChoose(storey);
          }}
        >
          <span className="level-name">{name}</span>
          <svg width="13" height="10" viewBox="0 0 13 10" aria-hidden="true">
            <path d="M.7.6H12.3L6.5 9.4Z" fill="var(--paper)" stroke="var(--ink)" strokeWidth="0.9" />
            <path d="M6.5.6H12.3L6.5 9.4Z" fill="var(--ink)" />
          </svg>
          <span className="level-height">{drawnLevel(zMm, units)}</span>
        </button>
      ))}
    </nav>
  );
}
