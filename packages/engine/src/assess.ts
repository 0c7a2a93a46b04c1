import type { Assessment, Scheme } from "@cornerway/schema";
import { designBasisFor } from "./codes/loads/design-basis-for.ts";
import { engineVersion } from "./engine-version.ts";
import { inOrder } from "./geometry/in-order.ts";
import { storeysOf } from "./geometry/storeys.ts";
import { analyse, type Analysis } from "./load-path/analysis.ts";
import { assessedBearings } from "./load-path/assessed-bearings.ts";
import { pathStretches } from "./load-path/path-stretches.ts";
import { marksOf } from "./marks/marks-of.ts";
import { questionsOf } from "./marks/questions-of.ts";
import { verdictsOf, worstOf } from "./marks/verdicts-of.ts";
import { SUM_ROUNDING } from "./numerics/tolerances.ts";
import { rounded } from "./units.ts";

/**
 * What the engine says of a scheme: bearings, the way down, marks and verdicts. Geometry and statics only, no strength.
 * Pure: the same scheme gives the same bits everywhere. Lengths mm, forces kN, loads unfactored.
 */
export function assess(given: Scheme): Assessment {
  const scheme = inOrder(given);
  const { gravity } = designBasisFor(scheme.site.edition);
  const analysis = analyse(scheme, (occupancy) => {
    const { pressurePa, partitionsPa } = gravity.occupancy(occupancy);
    return pressurePa + partitionsPa;
  });
  const marks = marksOf(analysis);
  const verdicts = verdictsOf(marks);
  const units = unitsOf(scheme, analysis, verdicts);
  return {
    engineVersion,
    verdict: worstOf([...units.map(({ verdict }) => verdict), ...marks.map(({ verdict }) => verdict)]),
    scope: "load path only, no strength checked",
    units,
    bearings: assessedBearings(analysis),
    path: pathStretches(analysis),
    marks,
    statics: staticsOf(analysis),
    questions: questionsOf(scheme),
  };
}

function unitsOf(scheme: Scheme, { weights }: Analysis, verdicts: ReturnType<typeof verdictsOf>): Assessment["units"] {
  const storeys = new Map(
    storeysOf(scheme).flatMap(({ index, containerIds }) => containerIds.map((id) => [id, index])),
  );
  return weights.map(({ id, weightKn, imposedKn }) => ({
    id,
    storey: storeys.get(id) ?? 0,
    verdict: verdicts.get(id) ?? "not checked",
    weightKn: rounded(weightKn),
    imposedKn: rounded(imposedKn),
  }));
}

/** What acts and what the ground gives back; what is left over has no way down. Posts and pads weigh nothing here. */
function staticsOf({ weights, run }: Analysis): Assessment["statics"] {
  const loadKn = weights.reduce((sum, { weightKn, imposedKn }) => sum + weightKn + imposedKn, 0);
  const reactionKn = run.reactions.reduce((sum, { forceKn }) => sum + forceKn, 0);
  return {
    loadKn: rounded(loadKn),
    reactionKn: rounded(reactionKn),
    residualKn: residual(loadKn - reactionKn, loadKn),
    reactions: run.reactions
      .map(({ elementId, at, forceKn }) => ({
        elementId,
        at: { xMm: rounded(at.xMm), yMm: rounded(at.yMm), zMm: rounded(at.zMm) },
        forceKn: rounded(forceKn),
      }))
      .toSorted((a, b) =>
        a.elementId < b.elementId ? -1 : a.elementId > b.elementId ? 1 : a.at.xMm - b.at.xMm || a.at.yMm - b.at.yMm,
      ),
  };
}

/** Rounding of sums is no residual: below one part in 10⁹ of the load it is 0. */
const residual = (leftKn: number, loadKn: number): number =>
  Math.abs(leftKn) <= SUM_ROUNDING * Math.abs(loadKn) ? 0 : leftKn;
