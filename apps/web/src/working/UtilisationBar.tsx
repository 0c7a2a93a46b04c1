import { hatchFill } from "../look/hatch.ts";
import "./working.css";

/** Lengths, px: up to the limit at 1; past it, up to where the bar breaks; and the break itself. */
const [ONE, MOST, BREAK] = [142, 1.3, 7];
const WIDTH = ONE * MOST + BREAK;

/** Utilisation as a length on a ruled scale: ink up to the limit at 1, hatch past it, up to 1.30, then broken off. The figure says how far. */
export function UtilisationBar({ utilisation }: { utilisation: number }) {
  const upTo = Math.min(utilisation, 1) * ONE;
  const past = (Math.min(utilisation, MOST) - 1) * ONE;
  return (
    <div className="utilisation">
      <svg width={WIDTH} height={18} viewBox={`0 0 ${WIDTH} 18`} aria-hidden="true">
        <rect className="utilisation-length" x={0} y={3} width={upTo} height={10} />
        {past > 0 && (
          <rect
            className="utilisation-past"
            x={ONE}
            y={3}
            width={past}
            height={10}
            fill={hatchFill("does not work", "small")}
          />
        )}
        <path className="utilisation-rule" d={`M0 13H${ONE}`} />
        {[0, 0.25, 0.5, 0.75].map((part) => (
          <path key={part} className="utilisation-tick" d={`M${part * ONE} 13v4`} />
        ))}
        <path className="utilisation-end" d={`M${ONE} 0V17`} />
        {utilisation > MOST && <path className="utilisation-break" d={longBreak(ONE * MOST)} />}
      </svg>
      <span className="utilisation-figure">{utilisation.toFixed(2)}</span>
    </div>
  );
}

/** Two strokes of a long break beside each other. */
const longBreak = (xPx: number): string => [-1, 3].map((aside) => `M${xPx + aside + 3} 0l-2 7 3 3 -2 7`).join("");
