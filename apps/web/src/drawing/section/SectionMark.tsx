import type { SectionLine } from "@cornerway/engine";
import type { KeyboardEvent, PointerEvent } from "react";
import { ink, weight } from "../../look/ink.ts";
import { linePath, px } from "../px-path.ts";
import { fromScreen, toScreen, type ScreenPoint, type ViewTransform } from "../view-transform.ts";

type End = "from" | "to";

type SectionMarkProps = {
  line: SectionLine;
  view: ViewTransform;
  onLine: (line: SectionLine) => void;
};

/** A step of an end by key, mm; with Shift. */
const stepMm = 100;
const longStepMm = 1000;

/** The line of a section on the plan, heavy at its ends, arrows the way one looks; its ends are dragged or moved by key. */
export function SectionMark({ line, view, onLine }: SectionMarkProps) {
  const from = toScreen(view, { uMm: line.fromXMm, vMm: line.fromYMm });
  const to = toScreen(view, { uMm: line.toXMm, vMm: line.toYMm });
  const long = Math.hypot(to.xPx - from.xPx, to.yPx - from.yPx) || 1;
  const way = { x: (to.xPx - from.xPx) / long, y: (to.yPx - from.yPx) / long };
  const reach = Math.min(16, long / 3);
  const heavy = (at: ScreenPoint, sign: 1 | -1) =>
    linePath(at.xPx, at.yPx, at.xPx + sign * way.x * reach, at.yPx + sign * way.y * reach);
  const end = (name: End, at: ScreenPoint) => (
    <SectionEnd name={name} at={at} way={way} view={view} line={line} onLine={onLine} />
  );
  return (
    <g className="section-mark">
      <path
        d={linePath(from.xPx, from.yPx, to.xPx, to.yPx)}
        stroke={ink.ink}
        strokeWidth={weight.fine}
        strokeDasharray="14 3 3 3"
        pointerEvents="none"
      />
      <path d={heavy(from, 1) + heavy(to, -1)} stroke={ink.ink} strokeWidth={weight.border} pointerEvents="none" />
      {end("from", from)}
      {end("to", to)}
    </g>
  );
}

/** One end: an arrow the way one looks, the letter beside it, a target for the finger. */
function SectionEnd({
  name,
  at,
  way,
  view,
  line,
  onLine,
}: SectionMarkProps & { name: End; at: ScreenPoint; way: { x: number; y: number } }) {
  const move = (xMm: number, yMm: number) => onLine(withEnd(line, name, xMm, yMm));
  const byKey = (event: KeyboardEvent) => {
    const step = event.shiftKey ? longStepMm : stepMm;
    const [x, y] = arrowWays[event.key] ?? [0, 0];
    if (x === 0 && y === 0) return;
    event.preventDefault();
    event.stopPropagation();
    const [xMm, yMm] = name === "from" ? [line.fromXMm, line.fromYMm] : [line.toXMm, line.toYMm];
    move(xMm + x * step, yMm + y * step);
  };
  const drag = (event: PointerEvent<SVGGElement>) => {
    if (!event.currentTarget.hasPointerCapture(event.pointerId)) return;
    event.stopPropagation();
    const matrix = event.currentTarget.getScreenCTM();
    if (matrix === null) return;
    const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    const { uMm, vMm } = fromScreen(view, { xPx: x, yPx: y });
    move(Math.round(uMm / 10) * 10, Math.round(vMm / 10) * 10);
  };
  // Looking to the left of the line, which on paper is up from a line that runs to the right.
  const look = { x: way.y, y: -way.x };
  const tip = { xPx: at.xPx + look.x * 15, yPx: at.yPx + look.y * 15 };
  return (
    <g
      className="section-end"
      role="button"
      tabIndex={0}
      aria-label={`${name === "from" ? "First" : "Second"} end of the section line; arrow keys move it 100 mm`}
      onKeyDown={byKey}
      onPointerDown={(event) => {
        event.stopPropagation();
        event.currentTarget.setPointerCapture(event.pointerId);
      }}
      onPointerMove={drag}
    >
      <circle cx={px(at.xPx)} cy={px(at.yPx)} r={16} fill="transparent" />
      <path d={linePath(at.xPx, at.yPx, tip.xPx, tip.yPx)} stroke={ink.ink} strokeWidth={weight.edge} />
      <path d={arrowHead(tip, look)} fill={ink.ink} />
      <text
        x={px(at.xPx - look.x * 10)}
        y={px(at.yPx - look.y * 10 + 4.5)}
        textAnchor="middle"
        fontSize={13}
        fontWeight={600}
        fill={ink.ink}
        stroke={ink.paper}
        strokeWidth={4}
        paintOrder="stroke"
      >
        A
      </text>
    </g>
  );
}

const arrowWays: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** The line with one end elsewhere; an end is never laid on the other. */
function withEnd(line: SectionLine, name: End, xMm: number, yMm: number): SectionLine {
  const other = name === "from" ? [line.toXMm, line.toYMm] : [line.fromXMm, line.fromYMm];
  if (Math.hypot(xMm - (other[0] ?? 0), yMm - (other[1] ?? 0)) < leastLineMm) return line;
  return name === "from" ? { ...line, fromXMm: xMm, fromYMm: yMm } : { ...line, toXMm: xMm, toYMm: yMm };
}

const leastLineMm = 200;

const arrowHead = ({ xPx, yPx }: ScreenPoint, { x, y }: { x: number; y: number }): string =>
  `M${px(xPx + x * 5)} ${px(yPx + y * 5)}L${px(xPx - y * 3.4)} ${px(yPx + x * 3.4)}L${px(xPx + y * 3.4)} ${px(yPx - x * 3.4)}Z`;
