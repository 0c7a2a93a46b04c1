import { z } from "zod";
import { BroughtIn } from "./archive.ts";
import { AuthorityProfile } from "./authority.ts";
import { Check } from "./check.ts";
import { ConditionStep } from "./condition.ts";
import { KeptCostBook } from "./cost-book.ts";
import { Decision } from "./decision.ts";
import {
  ActId,
  ConditionId,
  Digest,
  ElementId,
  PersonId,
  ProjectId,
  QuestionId,
  SealIssueId,
  SurveyedContainerId,
  OptionId,
  OptionSetId,
} from "./ids.ts";
import { KeptFile } from "./kept-file.ts";
import { MarkDisposition } from "./mark-disposition.ts";
import { Confirmation } from "./memory-values.ts";
import { SealedCopy, SealIssue } from "./seal.ts";
import { Operation } from "./operation.ts";
import { KeptOption, OptionPick, OptionWithdrawal } from "./option-set.ts";
import { Licence } from "./people.ts";
import { Units } from "./permit-set.ts";
import { CommentStep, RaisedComment } from "./plan-check.ts";
import { Question, QuestionStep } from "./question.ts";
import { Author, ChangeRequest, Moment, Note, RevisionLetter, Stamp } from "./review.ts";
import { Role, roles } from "./roles.ts";
import { SiteWord } from "./site-item.ts";
import { ProjectSurveyLimits } from "./survey-limits.ts";
import { SurveyedContainer, SurveyStep } from "./survey.ts";
import { Verdict } from "./verdict.ts";

/** Someone who reads by a link: for whom it was made. */
const ofReader = { personId: PersonId, name: z.string() };
const ofPerson = { personId: PersonId, personName: z.string(), role: Role };

const ofSet = { setId: OptionSetId, setNumber: z.int() };

/** What happened, by kind. A payload sits in a side table, so that it can be withheld while proofs still hold. */
export const RecordPayload = z
  .discriminatedUnion("kind", [
    z.strictObject({ kind: z.literal("project opened"), name: z.string() }),
    z.strictObject({
      kind: z.literal("role given"),
      personName: z.string(),
      role: Role,
      /** Whoever asked them in; absent for those given their part when the project was opened. */
      invitedBy: z.string().optional(),
      /** When a reader's part ends. */
      expiresAt: Moment.optional(),
    }),
    z.strictObject({ kind: z.literal("person invited"), email: z.string(), role: Role }),
    z.strictObject({ kind: z.literal("invitation withdrawn"), email: z.string(), role: Role }),
    z.strictObject({
      kind: z.literal("role confirmed"),
      ...ofPerson,
      /** As the engineer stated it; nobody verified it. */
      licence: Licence.nullable(),
    }),
    z.strictObject({ kind: z.literal("role removed"), ...ofPerson }),
    z.strictObject({ kind: z.literal("role expired"), ...ofPerson }),
    z.strictObject({ kind: z.literal("expiry set"), ...ofPerson, expiresAt: Moment }),
    z.strictObject({ kind: z.literal("reader link made"), ...ofReader, expiresAt: Moment }),
    z.strictObject({ kind: z.literal("reader link opened"), ...ofReader }),
    z.strictObject({ kind: z.literal("reader link ended"), ...ofReader }),
    z.strictObject({
      kind: z.literal("drawn"),
      actId: ActId,
      draftNumber: z.int(),
      contentDigest: Digest,
      operations: z.array(Operation),
      inverse: z.array(Operation),
      undoes: ActId.nullable(),
    }),
    z.strictObject({
      kind: z.literal("revision sent"),
      letter: RevisionLetter,
      contentDigest: Digest,
      draftNumber: z.int(),
      remark: z.string().nullable(),
    }),
    z.strictObject({
      kind: z.literal("assessed"),
      letter: RevisionLetter,
      contentDigest: Digest,
      resultDigest: Digest,
      verdict: Verdict,
      engineVersion: z.string(),
    }),
    z.strictObject({ kind: z.literal("assessment asked for"), letter: RevisionLetter, contentDigest: Digest }),
    z.strictObject({
      kind: z.literal("assessment failed"),
      letter: RevisionLetter,
      contentDigest: Digest,
      why: z.string(),
    }),
    z.strictObject({ kind: z.literal("note written"), note: Note }),
    z.strictObject({ kind: z.literal("note settled"), noteId: z.uuid() }),
    z.strictObject({ kind: z.literal("request made"), request: ChangeRequest }),
    z.strictObject({ kind: z.literal("request taken in"), requestId: z.uuid(), number: z.int(), actId: ActId }),
    z.strictObject({ kind: z.literal("request declined"), requestId: z.uuid(), number: z.int(), reason: z.string() }),
    z.strictObject({ kind: z.literal("stamp pressed"), stamp: Stamp }),
    z.strictObject({ kind: z.literal("question asked"), question: Question }),
    z.strictObject({
      kind: z.literal("question followed"),
      questionId: QuestionId,
      number: z.int(),
      elementId: ElementId,
      step: QuestionStep,
    }),
    z.strictObject({
      kind: z.literal("condition followed"),
      conditionId: ConditionId,
      number: z.int(),
      step: ConditionStep,
    }),
    z.strictObject({ kind: z.literal("cost book changed"), number: z.int(), digest: Digest, book: KeptCostBook }),
    z.strictObject({ kind: z.literal("decision made"), decision: Decision }),
    z.strictObject({ kind: z.literal("option set opened"), setId: OptionSetId, number: z.int(), name: z.string() }),
    z.strictObject({ kind: z.literal("option kept"), ...ofSet, option: KeptOption }),
    z.strictObject({
      kind: z.literal("option assessed"),
      ...{ ...ofSet, optionId: OptionId, place: z.int(), verdict: Verdict },
      resultDigest: Digest.nullable(),
      engineVersion: z.string(),
      /** Why there is no answer; null where there is one. */
      why: z.string().nullable(),
    }),
    z.strictObject({ kind: z.literal("option picked"), ...ofSet, place: z.int(), name: z.string(), pick: OptionPick }),
    z.strictObject({
      kind: z.literal("option withdrawn"),
      ...{ ...ofSet, optionId: OptionId, place: z.int(), name: z.string(), withdrawal: OptionWithdrawal },
    }),
    z.strictObject({
      kind: z.literal("set printed"),
      letter: RevisionLetter,
      units: Units,
      /** The head it was printed from; the set itself stands outside it. */
      upTo: z.int(),
      setDigest: Digest,
      pages: z.int(),
    }),
    z.strictObject({ kind: z.literal("authority described"), profile: AuthorityProfile }),
    z.strictObject({ kind: z.literal("comments brought in"), comments: z.array(RaisedComment) }),
    z.strictObject({ kind: z.literal("comment followed"), commentId: z.uuid(), number: z.string(), step: CommentStep }),
    z.strictObject({ kind: z.literal("revision checked"), check: Check }),
    z.strictObject({ kind: z.literal("mark disposed"), disposition: MarkDisposition }),
    z.strictObject({ kind: z.literal("values confirmed"), confirmation: Confirmation }),
    z.strictObject({ kind: z.literal("file kept"), file: KeptFile }),
    z.strictObject({ kind: z.literal("issued for seal"), issue: SealIssue }),
    z.strictObject({
      kind: z.literal("sealed copy kept"),
      issueId: SealIssueId,
      revision: RevisionLetter,
      copy: SealedCopy,
    }),
    z.strictObject({ kind: z.literal("container offered"), container: SurveyedContainer.omit({ steps: true }) }),
    z.strictObject({
      kind: z.literal("container followed"),
      containerId: SurveyedContainerId,
      containerNumber: z.string(),
      step: SurveyStep,
    }),
    z.strictObject({ kind: z.literal("survey limits set"), set: ProjectSurveyLimits }),
    z.strictObject({ kind: z.literal("site word said"), word: SiteWord }),
    z.strictObject({ kind: z.literal("brought in"), ...BroughtIn.shape }),
    z.strictObject({ kind: z.literal("webhook made"), host: z.string() }),
    z.strictObject({ kind: z.literal("webhook ended"), host: z.string() }),
    z.strictObject({ kind: z.literal("webhook stopped"), host: z.string(), why: z.string() }),
  ])
  .meta({ id: "RecordPayload" });
export type RecordPayload = z.infer<typeof RecordPayload>;
export type RecordKind = RecordPayload["kind"];
export const recordKinds: readonly RecordKind[] = RecordPayload.options.map((option) => option.shape.kind.value);

/** Who may see an entry of a kind. Readers see issued revisions and what was decided on them, never drafts or notes. */
export const maySee: Record<RecordKind, readonly Role[]> = {
  "project opened": ["architect", "engineer", "checker", "owner", "reader"],
  "role given": ["architect", "engineer", "checker", "owner", "reader"],
  "person invited": ["architect", "owner"],
  "invitation withdrawn": ["architect", "owner"],
  "role confirmed": ["architect", "engineer", "checker", "owner", "reader"],
  "role removed": ["architect", "engineer", "checker", "owner", "reader"],
  "role expired": ["architect", "engineer", "checker", "owner", "reader"],
  "expiry set": ["architect", "engineer", "checker", "owner", "reader"],
  "reader link made": ["architect", "engineer", "checker", "owner"],
  "reader link opened": ["architect", "engineer", "checker", "owner"],
  "reader link ended": ["architect", "engineer", "checker", "owner"],
  drawn: ["architect", "engineer", "checker"],
  "revision sent": ["architect", "engineer", "checker", "owner", "reader"],
  assessed: ["architect", "engineer", "checker", "owner", "reader"],
  "assessment asked for": ["architect", "engineer", "checker", "owner"],
  "assessment failed": ["architect", "engineer", "checker", "owner"],
  "note written": ["architect", "engineer", "checker", "owner"],
  "note settled": ["architect", "engineer", "checker", "owner"],
  "request made": ["architect", "engineer", "checker", "owner"],
  "request taken in": ["architect", "engineer", "checker", "owner"],
  "request declined": ["architect", "engineer", "checker", "owner"],
  "stamp pressed": ["architect", "engineer", "checker", "owner", "reader"],
  "question asked": ["architect", "engineer", "checker", "owner"],
  "question followed": ["architect", "engineer", "checker", "owner"],
  "condition followed": ["architect", "engineer", "checker", "owner"],
  "cost book changed": ["architect", "engineer", "checker", "owner"],
  "decision made": ["architect", "engineer", "checker", "owner"],
  "option set opened": ["architect", "engineer", "checker", "owner"],
  "option kept": ["architect", "engineer", "checker", "owner"],
  "option assessed": ["architect", "engineer", "checker", "owner"],
  "option picked": ["architect", "engineer", "checker", "owner"],
  "option withdrawn": ["architect", "engineer", "checker", "owner"],
  "set printed": ["architect", "engineer", "checker", "owner", "reader"],
  "authority described": ["architect", "engineer", "checker", "owner", "reader"],
  "comments brought in": ["architect", "engineer", "checker", "owner", "reader"],
  "comment followed": ["architect", "engineer", "checker", "owner", "reader"],
  "revision checked": ["architect", "engineer", "checker", "owner", "reader"],
  "mark disposed": ["architect", "engineer", "checker", "owner", "reader"],
  "values confirmed": ["architect", "engineer", "checker", "owner", "reader"],
  "file kept": ["architect", "engineer", "checker", "owner"],
  "issued for seal": ["architect", "engineer", "checker", "owner", "reader"],
  "sealed copy kept": ["architect", "engineer", "checker", "owner", "reader"],
  "container offered": ["architect", "engineer", "checker", "owner", "reader"],
  "container followed": ["architect", "engineer", "checker", "owner", "reader"],
  "survey limits set": ["architect", "engineer", "checker", "owner", "reader"],
  "site word said": ["architect", "engineer", "checker", "owner", "reader"],
  "brought in": ["architect", "engineer", "checker", "owner", "reader"],
  "webhook made": ["architect", "owner"],
  "webhook ended": ["architect", "owner"],
  "webhook stopped": ["architect", "owner"],
};

/** True when someone holding any of these roles may see entries of the kind. */
export const mayReadEntry = (held: readonly Role[], kind: RecordKind): boolean =>
  held.some((role) => maySee[kind].includes(role));

/** Who acted: a person in a role, an administrator with no part in the project, or the service itself. */
export const Actor = Author.extend({ role: z.enum([...roles, "administrator", "service"]) }).meta({ id: "Actor" });
export type Actor = z.infer<typeof Actor>;

/** The service as an actor: the nil UUID of RFC 9562 is no person's id. */
export const serviceActor: Actor = { id: "00000000-0000-0000-0000-000000000000", name: "Cornerway", role: "service" };

/** One act. `leaf` is the RFC 9162 leaf hash, `head` the tree head over entries 1 to `number`. */
export const RecordEntry = z
  .strictObject({
    projectId: ProjectId,
    number: z.int().min(1),
    at: Moment,
    actor: Actor,
    kind: z.string(),
    leaf: Digest,
    head: Digest,
    /** Null where the reader may know that something happened, but not what. */
    payload: RecordPayload.nullable(),
  })
  .meta({ id: "RecordEntry" });
export type RecordEntry = z.infer<typeof RecordEntry>;
