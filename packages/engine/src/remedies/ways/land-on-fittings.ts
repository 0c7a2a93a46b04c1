import { alignments } from "../../alignment/alignments.ts";
import { compassPoint } from "../../marks/compass.ts";
import { moveUnits, type Shift } from "../move-units.ts";
import { unitsStandingOn } from "../standing-on.ts";
import type { Generator, Ladder, RemedyGround, Trial } from "../trial.ts";

/**
 * Moves that put corners on fittings, of the unit alone or with the gap below opened or closed to suit; each by itself. What
 * stands on its corners goes along; what lies across its rails may stay where it is, if it finds them there again.
 */
export const landOnFittings: Generator = (ground) => {
  const unit = ground.scheme.containers.find(({ id }) => id === ground.mark.elements[0]);
  if (unit === undefined) return [];
  const above = unitsStandingOn(ground.analysis, unit.id);
  const all = landing(ground, unit, [unit.id, ...above]);
  const across = above.length > 0 && above.every((id) => liesAcross(ground.analysis, id, unit.id));
  return across ? [...landing(ground, unit, [unit.id]), ...all] : all;
};

/** Whether a unit comes down on another by its rails alone. */
const liesAcross = ({ bearings }: RemedyGround["analysis"], id: string, belowId: string): boolean =>
  (bearings.find(({ unitId }) => unitId === id)?.contacts ?? []).every(
    ({ target, fitting }) => target.on === "ground" || target.elementId !== belowId || fitting === undefined,
  );

const landing = (
  { scheme, analysis }: RemedyGround,
  unit: { readonly id: string },
  moved: readonly string[],
): readonly Ladder[] =>
  alignments(scheme, unit.id)
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

/** The best of them; they come best first. */
const MOST = 4;
