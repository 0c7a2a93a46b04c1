import { memo } from "react";
import { ink } from "../../look/ink.ts";
import { pencilFill } from "../../look/hatch.ts";
import { Cloud } from "../cloud/Cloud.tsx";
import { px, rectPath } from "../px-path.ts";
import { sameDrawn } from "../same-drawn.ts";
import { deltaMiddle, type CloudMark } from "./cloud-marks.ts";
import "./compare.css";

type CloudMarksProps = {
  marks: readonly CloudMark[];
  chosenNumber: number | null;
};

/** What changed on one view: washed in yellow, or hatched in pencil where it is gone, each in a cloud. */
export const CloudMarks = memo(function CloudMarks({ marks, chosenNumber }: CloudMarksProps) {
  return (
    <g className="cloud-marks" pointerEvents="none" aria-hidden="true">
      {marks.map(({ key, cloud, wash, gone, numbers }) => (
        <g key={key} data-numbers={numbers.join(" ")}>
          {wash !== null && <path className="yellow-wash" d={rectPath(wash)} fill={ink.wash} />}
          {gone !== null && (
            <path
              d={rectPath(gone)}
              fill={pencilFill.open}
              stroke={ink.graphite}
              strokeWidth={0.9}
              strokeDasharray="5 3"
            />
          )}
          <Cloud rect={cloud} colour={ink.ochre} />
          {chosenNumber !== null && numbers.includes(chosenNumber) && (
            <path d={rectPath(cloud)} fill="none" stroke={ink.ink} strokeWidth={1.1} />
          )}
        </g>
      ))}
    </g>
  );
}, sameDrawn);

/** The deltas of the clouds of one view; the later revision's letter stands in them. */
export const Deltas = memo(function Deltas({ marks, letter }: { marks: readonly CloudMark[]; letter: string }) {
  return (
    <g className="cloud-deltas" pointerEvents="none" aria-hidden="true">
      {marks.map(({ key, delta, numbers }) => (
        <Delta key={key} {...deltaMiddle(delta)} letter={letter} numbers={numbers} />
      ))}
    </g>
  );
}, sameDrawn);

/** The delta of the later revision with the number of the change beside it; a plus where it stands for several. */
function Delta({
  xPx,
  yPx,
  letter,
  numbers,
}: {
  xPx: number;
  yPx: number;
  letter: string;
  numbers: readonly number[];
}) {
  const [x, y] = [px(xPx - 6), px(yPx)];
  const number = numbers.length > 1 ? `${numbers[0]}+` : `${numbers[0] ?? ""}`;
  return (
    <g className="cloud-delta">
      <path
        d={`M${x} ${px(y - 11)}l11 19h-22Z`}
        fill={ink.wash}
        stroke={ink.ochre}
        strokeWidth={1.4}
        strokeLinejoin="round"
      />
      <text x={x} y={px(y + 5)} textAnchor="middle" fontSize={11} fontWeight={600} fill={ink.ink}>
        {letter}
      </text>
      <circle cx={px(x + 13)} cy={px(y - 5)} r={7.5} fill={ink.slip} stroke={ink.ink} strokeWidth={0.9} />
      <text x={px(x + 13)} y={px(y - 1.6)} textAnchor="middle" fontSize={9.5} fontWeight={600} fill={ink.ink}>
        {number}
      </text>
    </g>
  );
}
