import type { Assessment, Revision } from "@cornerway/schema";
import { useMemo } from "react";
import type { ViewLayer } from "../../drawing/contract.ts";
import { ElevationView } from "../../drawing/elevation/ElevationView.tsx";
import { project as onPaper, toScreen } from "../../drawing/view-transform.ts";
import type { ViewTransform } from "../../drawing/view-transform.ts";
import { HatchDefs } from "../../look/HatchDefs.tsx";
import { extentOf } from "../../paper/lay-views.ts";
import type { Hindrance } from "./hindrances.ts";

const widthPx = 620;
const heightPx = 330;
const groundPx = 290;
const roomPx = 40;

interface StatusPictureProps {
  scheme: Revision["scheme"];
  /** Null while not checked. */
  assessment: Assessment | null;
  layer?: ViewLayer | undefined;
  inTheWay: readonly Pick<Hindrance, "id" | "mark">[];
}

/** The building from the south with the numbers of what stands in the way. No grid, no dimensions, no figures. */
export function StatusPicture({ scheme, assessment, layer, inTheWay }: StatusPictureProps) {
  const view = useMemo(() => fitted(scheme), [scheme]);
  return (
    <svg
      className="status-drawing"
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      role="img"
      aria-label="The building from the south"
    >
      <HatchDefs />
      <ElevationView scheme={scheme} assessment={assessment} layer={layer} side="south" bare figures transform={view} />
      {inTheWay.map(({ id, mark }, at) => {
        if (mark === null) return null;
        const { xPx, yPx } = toScreen(view, onPaper("south", mark.at));
        return (
          <g key={id}>
            <circle cx={xPx} cy={yPx} r="10" fill="var(--slip)" stroke="var(--rust)" strokeWidth="1.2" />
            <text x={xPx} y={yPx + 4} textAnchor="middle" fontSize="12" fontWeight="600" fill="var(--rust)">
              {at + 1}
            </text>
          </g>
        );
      })}
    </svg>
  );
}

function fitted(scheme: Revision["scheme"]): ViewTransform {
  const { uLow, uHigh, vHigh } = extentOf(scheme, "south");
  const pxPerM = Math.min(
    34,
    (widthPx - 2 * roomPx) / Math.max(1, (uHigh - uLow) / 1000),
    (groundPx - 24) / Math.max(1, vHigh / 1000),
  );
  return { originXPx: widthPx / 2 - ((uLow + uHigh) / 2000) * pxPerM, originYPx: groundPx, pxPerM };
}
