import type { Assessment, Mark, PointMm, Scheme } from "@cornerway/schema";
import { assess } from "./assess.ts";
import { placeContainer } from "./geometry/place.ts";
import type { HazardRefusal } from "./loads/hazard-refusal.ts";
import { worstFirst } from "./marks/marks-of.ts";
import { strengthMarks } from "./marks/strength-marks.ts";
import { verdictsOf, worstOf } from "./marks/verdicts-of.ts";
import { strength } from "./strength.ts";
import type { Strength } from "./strength/strength-of.ts";

/** What the engine says of a scheme with its strength, or why its hazards cannot be used. */
export type StrengthAssessment =
  | { readonly accepted: true; readonly assessment: Assessment }
  | { readonly accepted: false; readonly refusals: readonly HazardRefusal[] };

/**
 * The assessment of a scheme with strength in its marks and verdicts: what `assess` says, and what numbers say on the
 * scheme's design basis. No verdict is better than the load path's. Under gravity alone, where the basis has no hazards,
 * strength says where the scheme does not work and never that it works. Throws a RangeError for a scheme without containers.
 */
export function assessStrength(scheme: Scheme): StrengthAssessment {
  const base = assess(scheme);
  const answer = strength(scheme);
  if (!answer.accepted) return answer;
  const marks = [...base.marks, ...strengthMarks(answer, placesIn(scheme))].toSorted(worstFirst);
  const verdicts = verdictsOf(marks);
  const units = base.units.map((unit) => ({ ...unit, verdict: verdicts.get(unit.id) ?? unit.verdict }));
  const { under, vectors, checks, assumed, notJudged } = answer;
  return {
    accepted: true,
    assessment: {
      ...base,
      verdict: worstOf([...units, ...marks].map(({ verdict }) => verdict)),
      scope:
        under === "all loads"
          ? "load path, and strength under all loads"
          : "load path, and strength under gravity loads",
      units,
      marks,
      strength: {
        vectors,
        checks,
        envelope: answer.envelope.map(({ assumptions, runs, withoutEquilibrium }) => ({
          assumptions,
          runs,
          withoutEquilibrium,
        })),
        assumed: [...assumed],
        notJudged: [...notJudged],
      },
      workings: workingsOf(marks, answer),
    },
  };
}

function placesIn({ containers }: Scheme): (unitId: string) => PointMm {
  const middles = new Map(
    containers.map((container) => {
      const { frame, baseZMm, topZMm } = placeContainer(container);
      return [container.id, { xMm: frame.xMm, yMm: frame.yMm, zMm: (baseZMm + topZMm) / 2 }];
    }),
  );
  return (unitId) => {
    const middle = middles.get(unitId);
    if (middle === undefined) throw new RangeError(`no container ${unitId} in this scheme`);
    return middle;
  };
}

/** The working of every part a mark names, each once. */
function workingsOf(marks: readonly Mark[], { results }: Extract<Strength, { accepted: true }>): WorkingOfPart[] {
  const named = new Set(marks.flatMap(partsNamedBy));
  return results.flatMap(({ id, working }) =>
    working !== undefined && named.has(id) ? [{ partId: id, working }] : [],
  );
}

type WorkingOfPart = NonNullable<Assessment["workings"]>[number];

function partsNamedBy({ fact }: Mark): string[] {
  if (fact.kind === "strength-adequate") return [fact.governing.partId];
  if (fact.kind === "overstressed" || fact.kind === "strength-open") return fact.parts.map(({ partId }) => partId);
  return [];
}
