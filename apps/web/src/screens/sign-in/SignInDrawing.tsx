/** Two units, corner on corner, on the ground line: what a plain stack looks like. */
export function SignInDrawing() {
  return (
    <svg className="sign-in-drawing" viewBox="0 0 420 360" aria-hidden="true">
      <path d="M20 300H400" stroke="var(--ink)" strokeWidth="2.4" />
      <path
        d="M34 306l-10 12M64 306l-10 12M94 306l-10 12M244 306l10 12M274 306l10 12M304 306l10 12"
        stroke="var(--graphite)"
        strokeWidth="0.75"
      />
      <Unit x={50} y={220} width={320} />
      <Unit x={50} y={140} width={240} />
      <path
        d="M290 140V60M370 220V60M50 140V60"
        stroke="var(--graphite-2)"
        strokeWidth="0.75"
        strokeDasharray="16 3 3 3"
      />
      <path d="M50 78H370M46 82l8-8M286 82l8-8M366 82l8-8" stroke="var(--graphite)" strokeWidth="0.75" fill="none" />
    </svg>
  );
}

function Unit({ x, y, width }: { x: number; y: number; width: number }) {
  const folds = Array.from({ length: Math.floor(width / 11) - 1 }, (_, at) => x + 12 + at * 11);
  return (
    <g>
      {folds.map((fold, at) => (
        <path
          key={fold}
          d={`M${fold} ${y + 7}V${y + 73}`}
          stroke="var(--slate)"
          strokeWidth={at % 2 === 0 ? 0.5 : 0.3}
        />
      ))}
      <rect x={x} y={y} width={width} height="80" fill="none" stroke="var(--ink)" strokeWidth="1.8" />
      <path
        d={`M${x} ${y}h11v8h-11zM${x + width - 11} ${y}h11v8h-11zM${x} ${y + 72}h11v8h-11zM${x + width - 11} ${y + 72}h11v8h-11z`}
        fill="var(--ink)"
      />
    </g>
  );
}
