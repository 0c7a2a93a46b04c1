import { alignments } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import { useMemo } from "react";
import { ink } from "../../look/ink.ts";
import { drawnLength } from "../../units/drawn-length.ts";
import { useUnits } from "../../units/use-units.ts";
import { Lettering } from "../label/Lettering.tsx";
import { px } from "../px-path.ts";
import { project, toScreen, type Projection, type ViewTransform } from "../view-transform.ts";
import { alignmentTicks, topFittings } from "./alignment-ticks.ts";

type AlignmentTicksProps = {
  /** The scheme without what is held: alignments are found in it once, not at every step of a drag. */
  stood: Scheme;
  shown: Scheme;
  unitId: string;
  projection: Projection;
  view: ViewTransform;
};

/** Small ticks where fittings of the chosen unit would land on fittings, with the way that is left to go. */
export function AlignmentTicks({ stood, shown, unitId, projection, view }: AlignmentTicksProps) {
  const units = useUnits();
  const found = useMemo(() => alignments(stood, unitId), [stood, unitId]);
  const tops = useMemo(() => topFittings(stood, found), [stood, found]);
  const ticks = alignmentTicks({ stood, shown, unitId, found, tops });
  return (
    <g className="alignment-ticks" aria-hidden="true" pointerEvents="none">
      {ticks.map((tick) => {
        const { xPx, yPx } = toScreen(view, project(projection, tick.at));
        const off = offOnPaper(projection, tick.offXMm, tick.offYMm);
        return (
          <g key={tick.key}>
            <path
              d={`M${px(xPx - 4)} ${px(yPx - 9)}L${px(xPx)} ${px(yPx - 2)}L${px(xPx + 4)} ${px(yPx - 9)}`}
              fill="none"
              stroke={ink.graphite}
              strokeWidth={1.1}
            />
            {tick.first && off > leastShownMm ? (
              <Lettering
                text={drawnLength(off, units)}
                spot={{ xPx, yPx: yPx - 12, anchor: "middle" }}
                sizePx={11}
                colour={ink.graphite}
              />
            ) : null}
          </g>
        );
      })}
    </g>
  );
}

const leastShownMm = 1;

/** How much of a way a view shows. */
function offOnPaper(projection: Projection, xMm: number, yMm: number): number {
  if (projection === "plan") return Math.hypot(xMm, yMm);
  return Math.abs(projection === "south" || projection === "north" ? xMm : yMm);
}
