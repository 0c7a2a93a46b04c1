import type {
  Assessment,
  AuthorityProfile,
  Digest,
  Moment,
  PlanCheckComment,
  RecordEntry,
  Scheme,
  SignedHead,
  StrengthProof,
  UnitSystem,
} from "@cornerway/schema";
import type { z } from "zod";
import type { SetStatus } from "./status.ts";

/**
 * All that a permit set is printed from: one revision with its scheme, the server's recorded assessment of it, and the
 * record up to one head as a reader may see it. Drawings, schedules and calculations come from this object alone.
 */
export type SetSource = {
  units: UnitSystem;
  project: { id: string; name: string; place: string; client: string };
  /** Who has which part, as of the head. */
  parties: readonly { role: string; name: string }[];
  revision: {
    letter: string;
    sentAt: z.infer<typeof Moment>;
    sentBy: string;
    remark: string | null;
    contentDigest: Digest;
  };
  /** All revisions up to this one, the oldest first. */
  revisions: readonly { letter: string; sentAt: string; sentBy: string; remark: string | null }[];
  /** Other revisions of which sets were printed before, by when their last was, the oldest first: against the last one changes are marked. */
  earlier: readonly { letter: string; scheme: Scheme }[];
  /** How the authority wants changes marked. */
  authority: AuthorityProfile;
  scheme: Scheme;
  /**
   * Whose act set the rule of the sheet walls as it stands in the revision, and whose request that act took in; null where
   * nobody chose: the rule is that of a new scheme.
   */
  sheetWallsChosen: Choice | null;
  assessment: Assessment;
  resultDigest: Digest;
  /** What stands behind verdicts of strength; null where strength was not run. */
  proof: StrengthProof | null;
  record: {
    number: number;
    at: string;
    head: Digest;
    entries: readonly RecordEntry[];
    /** The head as it is signed for the time of its entry; null where the service signs nothing. */
    signed: SignedHead | null;
  };
  /** Comments of the authority answered with this set, in the order they came. */
  comments: readonly PlanCheckComment[];
  /** How the revision stands at that head: what every page says of itself. */
  status: SetStatus;
  verification: VerificationSummary;
};

/** A choice as it was drawn, and who asked for it. */
export type Choice = { drawn: ChoiceAct; asked: ChoiceAct | null };
export type ChoiceAct = { by: string; role: string; at: string };

/** The verification manual of the engine, family by family. */
export type VerificationSummary = {
  engineVersion: string;
  families: readonly { title: string; about: string; cases: number; within: number; widest: string }[];
  counts: readonly { certainty: string; cases: number; within: number }[];
};
