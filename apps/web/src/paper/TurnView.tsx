/** The quiet way beside the elevation's title: to the next side of the building. */
export function TurnView({ xPx, yPx, onTurn }: { xPx: number; yPx: number; onTurn: () => void }) {
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
      <rect x={xPx + 258} y={yPx - 14} width="84" height="32" fill="transparent" />
      <text x={xPx + 264} y={yPx + 15} fontSize="11" textDecoration="underline">
        next side
      </text>
    </g>
  );
}
