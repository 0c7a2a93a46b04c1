import type { LoadDerivation, Scheme, StrengthProof, StrengthReport } from "@cornerway/schema";
import { inOrder } from "../geometry/in-order.ts";
import { analyse } from "../load-path/analysis.ts";
import type { ShapeLimit } from "../loads/shape-limit.ts";
import { schemeActions } from "../strength/scheme-actions.ts";
import type { StrengthBasis } from "../strength/strength-basis.ts";
import type { Strength } from "../strength/strength-of.ts";
import { strengthRuns } from "../strength/strength-runs.ts";
import { caseTotals } from "./case-totals.ts";
import { checkResult } from "./check-result.ts";
import { combinationList } from "./combination-list.ts";
import { coverageReport } from "./coverage-report.ts";
import { loadDerivations, type NamedLoad } from "./load-derivations.ts";
import { withoutEquilibrium } from "./without-equilibrium.ts";

type Judged = Extract<Strength, { accepted: true }>;

/**
 * What stands behind an answer of strength, as it is recorded and printed: results worst first, coverage, loads of the
 * place, combinations; and the working of every governing check and load. Takes the basis the answer was given on.
 */
export function strengthProof(given: Scheme, answer: Judged, basis: StrengthBasis): StrengthProof {
  const scheme = inOrder(given);
  const analysis = analyse(scheme);
  const actions = schemeActions(scheme, analysis, basis);
  if (!actions.accepted) throw new RangeError("strengthProof: these hazards were refused");
  const plan = strengthRuns(actions, basis, analysis);
  const loads = loadDerivations(actions);
  const { hazards } = scheme.basis;
  return {
    report: {
      results: answer.results.map(checkResult),
      coverage: coverageReport(),
      loads: loads.map(loadRow),
      cases: caseTotals(plan.cases, scheme),
      combinations: combinationList(plan.runs),
      windLimits: (actions.site?.wind.limits ?? []).map(limitRow),
      actionsLeftOut: hazards === null ? [] : [...basis.loads.gaps(hazards)],
      withoutEquilibrium: withoutEquilibrium(answer.refusedRuns),
    },
    workings: [
      ...answer.results.flatMap(({ id, working }) => (working === undefined ? [] : [{ id, working }])),
      ...loads.map(({ id, working }) => ({ id, working })),
    ],
  };
}

function loadRow({ id, group, working }: NamedLoad): LoadDerivation {
  const { title, clause, certainty, result } = working;
  return { id, group, title, symbol: result.symbol, value: result.value, unit: result.unit, clause, certainty };
}

const limitRow = ({ code, holds, value, limit, unit, clause }: ShapeLimit): StrengthReport["windLimits"][number] => ({
  limit: code,
  holds,
  value,
  most: limit,
  unit,
  clause,
});
