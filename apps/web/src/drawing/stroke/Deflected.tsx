import {
  deflectionFactor,
  elevationFaces,
  largestOf,
  type DeflectedShape,
  type MovedLine,
  type Side,
} from "@cornerway/engine";
import { figuresIn, type PointMm, type Scheme } from "@cornerway/schema";
import { useMemo } from "react";
import { ink, weight } from "../../look/ink.ts";
import { useUnits } from "../../units/use-units.ts";
import { Lettering } from "../label/Lettering.tsx";
import { polylinePath } from "../px-path.ts";
import { project, toScreen, type ViewTransform } from "../view-transform.ts";
import { factorFigure } from "./factor-figure.ts";

export interface DeflectedProps {
  shape: DeflectedShape;
  scheme: Scheme;
  side: Side;
  view: ViewTransform;
}

/** The largest movement seen is drawn so long at the scale of the view, mm of the building. */
export const drawnLargestMm = 300;

/** Lines of a unit this far behind its face in a view are those of its other side, mm: half its width. */
const otherSideMm = 1219;

/** Posts and rails of the faces seen where the run moves them to, the farthest drawn as long as is said; its figure beside it. */
export function Deflected({ shape, scheme, side, view }: DeflectedProps) {
  const units = useUnits();
  const seen = useMemo(() => {
    const lines = seenLines(shape.lines, scheme, side);
    return { lines, largest: largestOf(lines) };
  }, [shape, scheme, side]);
  const factor = deflectionFactor(seen, drawnLargestMm);
  const moved = (at: PointMm, by: PointMm) =>
    toScreen(
      view,
      project(side, { xMm: at.xMm + factor * by.xMm, yMm: at.yMm + factor * by.yMm, zMm: at.zMm + factor * by.zMm }),
    );
  const { largest } = seen;
  return (
    <g className="deflected">
      <g fill="none" stroke={ink.graphite} strokeWidth={weight.edge} strokeLinejoin="round">
        {seen.lines.map(({ ownerId, points }, n) => (
          <path key={`${ownerId} ${n}`} d={polylinePath(points.map(({ at, movedMm }) => moved(at, movedMm)))} />
        ))}
      </g>
      {largest === null ? null : (
        <Lettering
          text={`${figuresIn(units).small(largest.mm)}, drawn ${factorFigure(factor)}`}
          spot={{ ...spotBeside(toScreen(view, project(side, largest.at))), anchor: "middle" }}
          sizePx={11}
          colour={ink.graphite}
        />
      )}
    </g>
  );
}

const spotBeside = ({ xPx, yPx }: { xPx: number; yPx: number }) => ({ xPx, yPx: yPx - 9 });

/** Members on faces that are seen, of their own side. */
function seenLines(lines: readonly MovedLine[], scheme: Scheme, side: Side): MovedLine[] {
  const faces = elevationFaces(scheme, side).filter(({ beyond }) => !beyond);
  const units = new Set(scheme.containers.map(({ id }) => id));
  return lines.filter(({ ownerId, points }) => {
    const own = faces.filter(({ container }) => container.id === ownerId);
    if (!units.has(ownerId)) return true;
    return own.some(({ depthMm }) =>
      points.every(({ at }) => Math.abs(project(side, at).depthMm - depthMm) < otherSideMm),
    );
  });
}
