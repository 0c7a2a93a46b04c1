import { alignments } from "../../alignment/alignments.ts";
import { compassPoint } from "../../marks/compass.ts";
import { moveUnits, type Shift } from "../move-units.ts";
import { unitsStandingOn } from "../standing-on.ts";
import type { Generator, Trial } from "../trial.ts";

/** Moves that put corners on fittings, of the unit alone or with the gap below opened or closed to suit; each by itself. */
export const landOnFittings: Generator = ({ scheme, analysis, mark }) => {
  const unit = scheme.containers.find(({ id }) => id === mark.elements[0]);
  if (unit === undefined) return [];
  const moved = [unit.id, ...unitsStandingOn(analysis, unit.id)];
  return alignments(scheme, unit.id)
    .slice(0, MOST)
    .map(({ dxMm, dyMm, landings, gap }): readonly Trial[] => {
      const shifts = new Map<string, Shift>(moved.map((id) => [id, { dxMm, dyMm }]));
      if (gap !== undefined) shifts.set(gap.move.id, gap.move);
      return [
        {
          change: {
            ...{ kind: "land on fittings", unitId: unit.id, byMm: Math.round(Math.sqrt(dxMm * dxMm + dyMm * dyMm)) },
            towards: compassPoint(dxMm, dyMm, analysis.structure.building.northMdeg),
            landings: landings.length,
            gap: gap === undefined ? null : { movesId: gap.move.id, neededMm: gap.neededMm },
          },
          operations: moveUnits(scheme, analysis, shifts),
        },
      ];
    });
};

/** The best of them; they come best first. */
const MOST = 4;
