import { memo } from "react";
import { ink } from "../look/ink.ts";
import { numberHalfPx, placeNumbers } from "../drawing/leaders/place-numbers.ts";
import { routeLeaders, type KeptClear } from "../drawing/leaders/route-leaders.ts";
import { px } from "../drawing/px-path.ts";
import { sameDrawn } from "../drawing/same-drawn.ts";
import type { ScreenPoint } from "../drawing/view-transform.ts";
import type { LeaderAnchor, NoteSlot } from "./contract.ts";
import "./leader-layer.css";

type LeaderLayerProps = {
  /** One for each note that has a place in a view, px of the sheet. */
  anchors: readonly (LeaderAnchor & { number: number; colour?: string | undefined })[];
  slots: readonly NoteSlot[];
  /** The note that has the focus: its leader is drawn even if it must cross others, and heavier. */
  chosenNumber?: number | null | undefined;
  /** Words and figures on the drawing, px of the sheet: leaders and numbers keep off them. */
  lettered?: readonly KeptClear[] | undefined;
  /** Openings, px of the sheet: numbers stand beside them where they can. */
  openings?: readonly KeptClear[] | undefined;
  /** False where the drawing bears the numbers itself. */
  numbered?: boolean | undefined;
  /** True where the drawing is too small for numbers of the usual size. */
  small?: boolean | undefined;
};

const nothingLettered: readonly KeptClear[] = [];

/** A leader that rises or falls farther than this, px, or runs over more of the sheet, would cross the whole drawing. */
const mostRisePx = 200;
const mostRunShare = 0.52;

const isNear = ({ xPx, yPx }: ScreenPoint, slot: NoteSlot | undefined): boolean =>
  slot !== undefined && Math.abs(slot.yPx - yPx) <= mostRisePx && slot.xPx - xPx <= mostRunShare * slot.xPx;

/**
 * Leaders from the margin to the drawing, none crossing another. Where one would, or would run across the whole
 * drawing, the number stands at its place and the leader is drawn while the note is chosen.
 */
export const LeaderLayer = memo(function LeaderLayer({
  anchors,
  slots,
  chosenNumber = null,
  lettered = nothingLettered,
  openings = nothingLettered,
  numbered = true,
  small = false,
}: LeaderLayerProps) {
  const halfPx = small ? numberHalfPx.small : numberHalfPx.usual;
  const near = anchors.filter((anchor) =>
    isNear(
      anchor,
      slots.find((slot) => slot.number === anchor.number),
    ),
  );
  const routed = new Map(routeLeaders(near, slots, lettered).map(({ number, line }) => [number, line]));
  const alone = ({ number }: { number: number }) => (routed.get(number) ?? null) === null;
  const byNeed = [...anchors.filter(alone), ...anchors.filter((anchor) => !alone(anchor))];
  const spots = placeNumbers(byNeed, { lettered, openings }, halfPx);
  return (
    <g className="leaders">
      {anchors.map((anchor) => {
        const { number, colour = ink.ink } = anchor;
        const slot = slots.find((each) => each.number === number);
        const forced = number === chosenNumber && slot !== undefined ? [slot, anchor] : null;
        const line = routed.get(number) ?? forced;
        return (
          <g key={number}>
            {line !== null && <Leader line={line} end={anchor.end} colour={colour} chosen={number === chosenNumber} />}
            {numbered && (
              <NumberOnDrawing
                of={anchor}
                at={spots.get(number) ?? anchor}
                number={number}
                halfPx={halfPx}
                colour={colour}
                hasLeader={line !== null}
              />
            )}
          </g>
        );
      })}
    </g>
  );
}, sameDrawn);

function Leader({
  line,
  end,
  colour,
  chosen,
}: {
  line: readonly ScreenPoint[];
  end: "dot" | "arrow";
  colour: string;
  chosen: boolean;
}) {
  const d = `M${line.map(({ xPx, yPx }) => `${px(xPx)} ${px(yPx)}`).join("L")}`;
  const tip = line.at(-1);
  const before = line.at(-2);
  return (
    <g className="leader" fill="none" strokeLinejoin="round">
      <path d={d} stroke={ink.paper} strokeWidth={3.4} opacity={0.85} />
      <path d={d} stroke={colour} strokeWidth={chosen ? 1.5 : 0.8} />
      {tip !== undefined && end === "dot" && <circle cx={px(tip.xPx)} cy={px(tip.yPx)} r={2.6} fill={colour} />}
      {tip !== undefined && before !== undefined && end === "arrow" && <path d={arrow(before, tip)} fill={colour} />}
    </g>
  );
}

function arrow(from: ScreenPoint, tip: ScreenPoint): string {
  const length = Math.hypot(tip.xPx - from.xPx, tip.yPx - from.yPx) || 1;
  const [ux, uy] = [(tip.xPx - from.xPx) / length, (tip.yPx - from.yPx) / length];
  const corner = (aside: number) => `${px(tip.xPx - ux * 8 - uy * aside)} ${px(tip.yPx - uy * 8 + ux * aside)}`;
  return `M${px(tip.xPx)} ${px(tip.yPx)}L${corner(2.4)}L${corner(-2.4)}Z`;
}

type NumberOnDrawingProps = {
  of: ScreenPoint;
  at: ScreenPoint;
  number: number;
  halfPx: number;
  colour: string;
  hasLeader: boolean;
};

/** The number of a note by its place, tied to it where it had to move; one with a leader only on sheets too narrow for leaders. */
function NumberOnDrawing({ of, at, number, halfPx, colour, hasLeader }: NumberOnDrawingProps) {
  const moved = of.xPx !== at.xPx || of.yPx !== at.yPx;
  return (
    <g className={hasLeader ? "number-when-narrow" : undefined}>
      {moved && (
        <g fill={colour}>
          <path d={`M${px(of.xPx)} ${px(of.yPx)}L${px(at.xPx)} ${px(at.yPx)}`} stroke={colour} strokeWidth={0.8} />
          <circle cx={px(of.xPx)} cy={px(of.yPx)} r={2.2} />
        </g>
      )}
      <circle cx={px(at.xPx)} cy={px(at.yPx)} r={halfPx} fill={ink.slip} stroke={colour} strokeWidth={1.1} />
      <text
        x={px(at.xPx)}
        y={px(at.yPx + halfPx * 0.42)}
        textAnchor="middle"
        fontSize={halfPx + 2}
        fontWeight={600}
        fill={colour}
      >
        {number}
      </text>
    </g>
  );
}
