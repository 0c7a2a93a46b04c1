import { memo } from "react";
import { ink, weight } from "../look/ink.ts";
import { textWidthPx } from "./label/text-width.ts";
import { px } from "./px-path.ts";

/** Where the rule under a title ends, px. */
export const titleEndPx = (title: string, xPx: number): number =>
  xPx + 20 + Math.max(textWidthPx(title.toUpperCase(), 15, 0.07), leastRulePx) + 24;

const leastRulePx = 180;

type ViewTitleProps = { number: number; title: string; remark: string; xPx: number; yPx: number };

/** The numbered title of a view, under it: circle, capitals on a heavy rule, and what to know before reading it. */
export const ViewTitle = memo(function ViewTitle({ number, title, remark, xPx, yPx }: ViewTitleProps) {
  const capitals = title.toUpperCase();
  const right = titleEndPx(title, xPx);
  return (
    <g className="view-title">
      <circle cx={px(xPx)} cy={px(yPx)} r={12} fill={ink.paper} stroke={ink.ink} strokeWidth={weight.edge} />
      <text x={px(xPx)} y={px(yPx + 4.6)} textAnchor="middle" fontSize={13} fontWeight={600} fill={ink.ink}>
        {number}
      </text>
      <text x={px(xPx + 20)} y={px(yPx - 3)} fontSize={15} fontWeight={500} letterSpacing="0.07em" fill={ink.ink}>
        {capitals}
      </text>
      <path
        d={`M${px(xPx + 12)} ${px(yPx + 2)}H${px(right)}`}
        stroke={ink.ink}
        strokeWidth={weight.profile}
        strokeLinecap="round"
      />
      <text x={px(xPx + 20)} y={px(yPx + 15)} fontSize={11} fontWeight={400} letterSpacing="0.03em" fill={ink.graphite}>
        {remark}
      </text>
    </g>
  );
});
