import type { RectPx } from "./lay-views.ts";

export interface ViewTitleProps {
  number: number;
  title: string;
  line?: string | undefined;
  /** Left out where the view is not to scale. */
  pxPerM?: number | undefined;
  rect: RectPx;
  /** Turns the view to the next side of the building. */
  onTurn?: (() => void) | undefined;
}

/** The numbered title under a view, with its scale. 50 px a metre is 1:100 on the sheet. */
export function ViewTitle({ number, title, line, pxPerM, rect, onTurn }: ViewTitleProps) {
  const x = rect.leftPx + 26;
  const y = rect.topPx + rect.heightPx - 22;
  const scale = pxPerM === undefined ? null : `1:${Math.round(5000 / pxPerM)}`;
  const width = Math.max(150, title.length * 10.4 + 18);
  return (
    <g className="view-title">
      <circle cx={x} cy={y} r="12" fill="var(--paper)" stroke="var(--ink)" strokeWidth="1.1" />
      <text x={x} y={y + 4.5} textAnchor="middle" fontSize="13" fontWeight="600">
        {number}
      </text>
      <text x={x + 20} y={y - 5} fontSize="14" fontWeight="500" letterSpacing="0.08em">
        {title.toUpperCase()}
      </text>
      <path d={`M${x + 12} ${y}H${x + 20 + width}`} stroke="var(--ink)" strokeWidth="1.8" />
      <text x={x + 20} y={y + 14} fontSize="11" fill="var(--graphite)">
        {[scale, line].filter((part) => part !== null && part !== undefined).join(" · ")}
      </text>
      {onTurn === undefined ? null : <TurnView x={x + 30 + width} y={y} onTurn={onTurn} />}
    </g>
  );
}

function TurnView({ x, y, onTurn }: { x: number; y: number; onTurn: () => void }) {
  return (
    <g
      className="turn-view"
      role="button"
      tabIndex={0}
      aria-label="Turn to the next side"
      onPointerDown={(event) => event.stopPropagation()}
      onClick={onTurn}
      onKeyDown={(event) => {
        if (event.key === "Enter" || event.key === " ") onTurn();
      }}
    >
      <rect x={x - 6} y={y - 16} width="92" height="32" fill="transparent" />
      <text x={x} y={y + 4} fontSize="11" textDecoration="underline">
        next side
      </text>
    </g>
  );
}
