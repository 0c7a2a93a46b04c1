import { compareVerdicts } from "@cornerway/engine";
import type { Assessment, RunDifference } from "@cornerway/schema";

/** An answer of one engine to a scheme. */
export interface RunAnswer {
  assessment: Assessment;
  resultDigest: string;
}

/** What is not the same in two answers to the same scheme, subject by subject; equal digests say that nothing is. */
export function runDifference(before: RunAnswer, after: RunAnswer): RunDifference {
  const { whole, units, appeared, gone, worse, better, heavier } = compareVerdicts(before.assessment, after.assessment);
  const turned = (list: typeof worse) =>
    list.map(({ before: was, after: is }) => ({ markId: is.id, before: was.verdict, after: is.verdict }));
  return {
    before: { engineVersion: before.assessment.engineVersion, resultDigest: before.resultDigest },
    after: { engineVersion: after.assessment.engineVersion, resultDigest: after.resultDigest },
    ...{ same: before.resultDigest === after.resultDigest, scope: scopesOf(before, after), whole, units: [...units] },
    appeared: appeared.map(({ id, verdict }) => ({ markId: id, verdict })),
    gone: gone.map(({ id, verdict }) => ({ markId: id, verdict })),
    turned: turned([...worse, ...better]),
    heavier: heavier.map(({ after: is }) => ({ markId: is.id, verdict: is.verdict })),
  };
}

const scopesOf = ({ assessment: { scope: before } }: RunAnswer, { assessment: { scope: after } }: RunAnswer) => ({
  ...{ before, after },
});
