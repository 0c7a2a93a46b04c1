import { Triangle } from "../look/Triangle.tsx";
import type { SpineProps } from "./contract.ts";
import "./spine.css";

/** The binding edge: deltas, newest on top, a stitch for each entry between them, pencil dashes for what is not sent. */
export function Spine({ draftMoves, revisions, currentLetter, entriesBefore, entries, onChoose }: SpineProps) {
  return (
    <nav className="spine" aria-label="Revisions">
      <h2 className="caption">Revisions</h2>
      <ol className="spine-thread">
        {draftMoves > 0 && (
          <li className="spine-stop">
            <Stitches count={draftMoves} pencil />
            <button type="button" className="spine-draft" onClick={() => onChoose?.(null)}>
              <span>draft</span> <span>{`${draftMoves} ${draftMoves === 1 ? "move" : "moves"}`}</span>
            </button>
          </li>
        )}
        {revisions.map(({ letter, date, entriesSince }) => (
          <li className="spine-stop" key={letter}>
            <Stitches count={entriesSince} />
            <button
              type="button"
              className="spine-revision"
              aria-current={letter === currentLetter ? "true" : undefined}
              onClick={() => onChoose?.(letter)}
            >
              <Triangle letter={letter} current={letter === currentLetter} sizePx={28} />
              <span className="spine-date">{date}</span>
            </button>
          </li>
        ))}
        <li className="spine-stop spine-last">
          <Stitches count={entriesBefore} />
        </li>
      </ol>
      <p className="spine-foot">
        {entries === 0 ? "none yet" : `record ${entries} ${entries === 1 ? "entry" : "entries"}`}
      </p>
    </nav>
  );
}

const stitchPx = 11;
const leastPx = 26;

/** One stitch for each entry; moves not yet sent are pencil dashes. */
function Stitches({ count, pencil = false }: { count: number; pencil?: boolean }) {
  const high = Math.max(leastPx, (count + 1) * stitchPx);
  const step = high / (count + 1);
  const stitches = Array.from({ length: count }, (_, index) => {
    const y = (index + 1) * step;
    return pencil ? `M7 ${y}H21` : `M9 ${y + 1.8}L19 ${y - 1.8}`;
  });
  return (
    <svg className="stitches" width="28" height={high} aria-hidden="true">
      <path
        d={`M14 0V${high}`}
        stroke={pencil ? "var(--graphite)" : "var(--ink)"}
        strokeWidth="0.9"
        strokeDasharray={pencil ? "4 3" : undefined}
      />
      <path
        d={stitches.join("")}
        stroke={pencil ? "var(--graphite)" : "var(--ink)"}
        strokeWidth="1.1"
        strokeLinecap="round"
      />
    </svg>
  );
}
