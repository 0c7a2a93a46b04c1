import type { RunForces } from "@cornerway/engine";
import type { Assessment, Scheme, StrengthReport } from "@cornerway/schema";
import { lazy, Suspense, useCallback, useMemo, useState, type ReactNode } from "react";
import type { ViewLayer } from "../drawing/contract.ts";
import { laterPart } from "../controls/later-part.ts";
import { useForces, type Asking, type ForcesShown } from "./use-forces.ts";

const ForcesSection = lazy(async () => ({ default: (await import("./ForcesSection.tsx")).ForcesSection }));
/** What is solved comes long after the drawing stands. */
const useLayer = laterPart(() => import("./forces-layer.tsx"));

export interface ShownForces {
  shown: ForcesShown;
  /** The solved path for strokes, once it is of the scheme shown. */
  path: RunForces["path"] | null;
  layer: ViewLayer | undefined;
  /** Draws the deflected shape under a run; undefined for one that was not solved. */
  deflectedIn: (run: string) => (() => void) | undefined;
  /** In the margin, after the notes: what the strokes are of, and what else there is to see of it. */
  section: ReactNode;
}

/** Where the load goes, for a sheet: strokes, strands, the deflected shape, and the choice of what they are of. */
export function useForcesShown(scheme: Scheme, report: StrengthReport | null, asking: Asking): ShownForces {
  const shown = useForces(scheme, report, asking);
  const [deflected, drawDeflected] = useState(false);
  const { told, stand } = shown;
  const forces = told?.forces ?? null;
  const of = told?.scheme ?? null;
  const drawing = useLayer();
  const layer = useMemo(
    () => drawing?.forcesLayer(forces, { of, stand, deflected }),
    [drawing, forces, of, stand, deflected],
  );
  const { choose } = shown;
  const runs = told?.runs;
  const deflectedIn = useCallback(
    (run: string) => {
      if (runs?.includes(run) !== true) return undefined;
      return () => {
        choose(run);
        drawDeflected(true);
      };
    },
    [runs, choose],
  );
  const path = of === scheme && forces !== null ? forces.path : null;
  return {
    shown,
    path,
    layer,
    deflectedIn,
    section:
      told === null ? null : (
        <Suspense fallback={null}>
          <ForcesSection shown={shown} deflected={deflected} onDeflected={drawDeflected} />
        </Suspense>
      ),
  };
}

/** The assessment with its strokes as solved, where they are. */
export const withPath = (assessment: Assessment | null, path: ShownForces["path"]): Assessment | null =>
  assessment === null || path === null ? assessment : { ...assessment, path: [...path] };
