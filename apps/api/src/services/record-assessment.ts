import { serviceActor, type Assessment, type Digest } from "@cornerway/schema";
import { engineVersion } from "@cornerway/engine";
import { done, type Outcome } from "../outcome.ts";
import { append } from "../record/append.ts";
import type { Database } from "../store/database.ts";
import { insertAssessment, isAssessed } from "../store/revision-rows.ts";

export type Assessed =
  | { ok: true; assessment: Assessment; resultDigest: Digest }
  /** One sentence on what went wrong: too slow, or a fault of the engine. */
  | { ok: false; why: string };

/** Writes the server's answer to a revision, once: an answer that is there already stays. */
export function recordAssessment(
  database: Database,
  revision: { projectId: string; letter: string; contentDigest: Digest },
  assessed: Assessed,
): Promise<Outcome<void>> {
  const { projectId, letter, contentDigest } = revision;
  return database.act(projectId, async (tx) => {
    if (await isAssessed(tx, projectId, letter)) return done(undefined);
    if (assessed.ok) {
      const { assessment: result, resultDigest } = assessed;
      const { verdict } = result;
      const payload = { letter, contentDigest, resultDigest, verdict, engineVersion };
      const { at } = await append(tx, projectId, serviceActor, () => ({ kind: "assessed", ...payload }));
      const row = {
        letter,
        verdict,
        engineVersion,
        doneAt: at,
        state: "done",
        result,
        resultDigest,
        why: null,
      } as const;
      await insertAssessment(tx, projectId, row);
    } else {
      const { why } = assessed;
      const payload = { letter, contentDigest, why };
      const { at } = await append(tx, projectId, serviceActor, () => ({ kind: "assessment failed", ...payload }));
      const nothing = { verdict: "not checked", result: null, resultDigest: null } as const;
      await insertAssessment(tx, projectId, { letter, engineVersion, doneAt: at, state: "failed", ...nothing, why });
    }
    return done(undefined);
  });
}
