/** The delta of a revision, filled with yellow pencil only while current. */
export function Triangle({
  letter,
  current = false,
  sizePx = 18,
}: {
  letter: string;
  current?: boolean;
  sizePx?: number;
}) {
  return (
    <svg
      className="triangle"
      width={sizePx}
      height={sizePx}
      viewBox="0 0 24 24"
      role="img"
      aria-label={`Revision ${letter}${current ? ", current" : ""}`}
    >
      <path
        d="M12 2.2 22.6 20.8H1.4Z"
        fill={current ? "var(--ochre-wash)" : "none"}
        stroke={current ? "var(--ochre)" : "var(--ink)"}
        strokeWidth="1.4"
        strokeLinejoin="round"
      />
      <text x="12" y="18" textAnchor="middle" fontSize={letter.length > 1 ? 9 : 11} fontWeight="600" fill="var(--ink)">
        {letter}
      </text>
    </svg>
  );
}
