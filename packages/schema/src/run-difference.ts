import { z } from "zod";
import { assessmentScopes } from "./assessment.ts";
import { Digest, ElementId } from "./ids.ts";
import { Moment } from "./review.ts";
import { Verdict } from "./verdict.ts";

const EngineAnswer = z.strictObject({ engineVersion: z.string(), resultDigest: Digest });
const MarkVerdict = z.strictObject({ markId: z.string(), verdict: Verdict });

/**
 * What is not the same in two answers to one scheme: by an older engine and a newer one, or by the same one again. Where
 * digests are equal nothing is; where they are not and no list names anything, numbers moved and no verdict.
 */
export const RunDifference = z
  .strictObject({
    before: EngineAnswer,
    after: EngineAnswer,
    same: z.boolean(),
    scope: z.strictObject({ before: z.enum(assessmentScopes), after: z.enum(assessmentScopes) }),
    whole: z.strictObject({ before: Verdict, after: Verdict }),
    /** Units of another verdict; null where the unit is not told of. */
    units: z.array(z.strictObject({ unitId: ElementId, before: Verdict.nullable(), after: Verdict.nullable() })),
    appeared: z.array(MarkVerdict),
    gone: z.array(MarkVerdict),
    turned: z.array(z.strictObject({ markId: z.string(), before: Verdict, after: Verdict })),
    /** Of the same verdict, whose own figure grew. */
    heavier: z.array(MarkVerdict),
  })
  .meta({ id: "RunDifference" });
export type RunDifference = z.infer<typeof RunDifference>;

/** One recorded run of the engine on a revision, and what it says otherwise than the one before that can be read. */
export const RecordedRun = z
  .strictObject({
    attempt: z.int().min(1),
    engineVersion: z.string(),
    doneAt: Moment,
    verdict: Verdict,
    /** Null where it failed, or was made by an engine this service cannot read. */
    resultDigest: Digest.nullable(),
    difference: RunDifference.nullable(),
  })
  .meta({ id: "RecordedRun" });
export type RecordedRun = z.infer<typeof RecordedRun>;
