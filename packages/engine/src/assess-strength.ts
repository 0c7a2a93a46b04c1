import type { Assessment, PointMm, Scheme, StrengthProof } from "@cornerway/schema";
import { assess } from "./assess.ts";
import { strengthProof } from "./calc-sheet/strength-proof.ts";
import { placeContainer } from "./geometry/place.ts";
import { hazardRefusalText, type HazardRefusal } from "./loads/hazard-refusal.ts";
import { answeredByStrength } from "./marks/answered-by-strength.ts";
import { worstFirst } from "./marks/marks-of.ts";
import { strengthMarks } from "./marks/strength-marks.ts";
import { verdictsOf, worstOf } from "./marks/verdicts-of.ts";
import { strength, strengthBasisFor } from "./strength.ts";
import type { Strength, TellProgress } from "./strength/strength-of.ts";

/** What the engine says of a scheme with its strength and what stands behind it, or of its load path and why its hazards cannot be used. */
export type StrengthAssessment =
  | { readonly accepted: true; readonly assessment: Assessment; readonly proof: StrengthProof }
  | { readonly accepted: false; readonly refusals: readonly HazardRefusal[]; readonly assessment: Assessment };

/**
 * The assessment of a scheme with strength in its marks and verdicts: what `assess` says, and what numbers say on the
 * scheme's design basis. Nothing is said more mildly than by the load path but what it left to strength. Under gravity alone, where the basis has no hazards,
 * strength says where the scheme does not work and never that it works. Throws a RangeError for a scheme without containers.
 * `judge` is the full strength run, on a memory of its own unless another is given.
 */
export function assessStrength(
  scheme: Scheme,
  tell?: TellProgress,
  judge: (scheme: Scheme, tell?: TellProgress) => Strength = strength,
): StrengthAssessment {
  return assessedWith(scheme, judge(scheme, tell));
}

/** The same where the full strength run has been: `answer` is what it said of this scheme. */
export function assessedWith(scheme: Scheme, answer: Strength): StrengthAssessment {
  const base = assess(scheme);
  if (!answer.accepted) return { ...answer, assessment: withoutStrength(base, answer.refusals) };
  const marks = [...answeredByStrength(base.marks, answer), ...strengthMarks(answer, placesIn(scheme))].toSorted(
    worstFirst,
  );
  const verdicts = verdictsOf(marks);
  const units = base.units.map((unit) => ({ ...unit, verdict: verdicts.get(unit.id) ?? unit.verdict }));
  const { under, vectors, checks, assumed, notJudged } = answer;
  const assessment: Assessment = {
    ...base,
    verdict: worstOf([...units, ...marks].map(({ verdict }) => verdict)),
    scope:
      under === "all loads" ? "load path, and strength under all loads" : "load path, and strength under gravity loads",
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
  };
  return { accepted: true, assessment, proof: strengthProof(scheme, answer, strengthBasisFor(scheme.site.edition)) };
}

/** The load path alone, which never says that a scheme works. */
const withoutStrength = (base: Assessment, refusals: readonly HazardRefusal[]): Assessment => ({
  ...base,
  verdict: worstOf([base.verdict, "not checked"]),
  strengthRefused: refusals.map(hazardRefusalText),
});

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
