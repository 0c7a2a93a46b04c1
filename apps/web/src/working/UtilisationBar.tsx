import "./working.css";

const WIDTH = 162;

/** Utilisation as a length on a ruled scale with its end at 1; past the end it is drawn on, and says how far. */
export function UtilisationBar({ utilisation }: { utilisation: number }) {
  const drawn = Math.min(utilisation, 1.15);
  return (
    <div className="utilisation">
      <svg width={WIDTH * 1.18} height={18} viewBox={`0 0 ${WIDTH * 1.18} 18`} aria-hidden="true">
        <rect className="utilisation-length" x={0} y={3} width={drawn * WIDTH} height={10} />
        <path className="utilisation-rule" d={`M0 13H${WIDTH}`} />
        {[0, 0.25, 0.5, 0.75].map((part) => (
          <path key={part} className="utilisation-tick" d={`M${part * WIDTH} 13v4`} />
        ))}
        <path className="utilisation-end" d={`M${WIDTH} 0V17`} />
      </svg>
      <span className="utilisation-figure">{utilisation.toFixed(2)}</span>
    </div>
  );
}
