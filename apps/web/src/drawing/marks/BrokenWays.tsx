import type { BrokenWay } from "@cornerway/engine";
import { ink, weight } from "../../look/ink.ts";
import { polylinePath } from "../px-path.ts";
import { toScreen, type ViewTransform } from "../view-transform.ts";

/** The ways load would have to go and cannot: rust dashes. */
export const BrokenWays = ({ ways, view }: { ways: readonly BrokenWay[]; view: ViewTransform }) => (
  <g className="broken-ways" fill="none" stroke={ink.rust} strokeWidth={weight.edge} strokeLinejoin="round">
    {ways.map(({ markId, points }, at) => (
      <path
        key={`${markId} ${at}`}
        d={polylinePath(points.map((point) => toScreen(view, point)))}
        strokeDasharray={brokenDash}
      />
    ))}
  </g>
);

const brokenDash = "5 3.4";
