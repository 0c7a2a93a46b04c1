import { z } from "zod";
import { DecisionId, Digest, RequestId } from "./ids.ts";
import { Author, Moment, RevisionLetter } from "./review.ts";
import { personText } from "./text.ts";

/** Carries the digests on the owner's screen; refused when the content, the cost book or the premium is another. */
export const NewDecision = z
  .strictObject({
    id: DecisionId,
    revision: RevisionLetter,
    /** The request decided on; null where it is the revision itself. */
    requestId: RequestId.nullable(),
    decision: z.enum(["agree", "decline"]),
    reason: personText(2000).nullable(),
    contentDigest: Digest,
    costBookDigest: Digest,
    premiumDigest: Digest,
  })
  .meta({ id: "NewDecision" });
export type NewDecision = z.infer<typeof NewDecision>;

/** The owner's word on a price: of price, scope and risk, never of whether it stands. */
export const Decision = NewDecision.extend({
  reason: z.string().nullable(),
  /** What was decided on: the premium of the revision, or what the request adds to it. In `currency`, not rounded. */
  money: z.number(),
  currency: z.string(),
  /** True where any rate behind the price had no source. */
  forShow: z.boolean(),
  author: Author,
  decidedAt: Moment,
}).meta({ id: "Decision" });
export type Decision = z.infer<typeof Decision>;

/** What has changed since a decision. While nothing has, it stands. */
export const staleReasons = ["content", "cost book"] as const;

/** A decision with what has changed since; `latest` where it is the last word on its subject. */
export const DecisionShown = z
  .strictObject({ decision: Decision, stale: z.array(z.enum(staleReasons)), latest: z.boolean() })
  .meta({ id: "DecisionShown" });
export type DecisionShown = z.infer<typeof DecisionShown>;
