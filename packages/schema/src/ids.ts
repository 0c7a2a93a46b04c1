import { z } from "zod";

const uuid = () => z.uuid();

/** Ids of the service's own rows: UUIDs. */
export const ProjectId = uuid().meta({ id: "ProjectId" });
export const PersonId = uuid().meta({ id: "PersonId" });
export const NoteId = uuid().meta({ id: "NoteId" });
export const RequestId = uuid().meta({ id: "RequestId" });
export const StampId = uuid().meta({ id: "StampId" });
export const QuestionId = uuid().meta({ id: "QuestionId" });
export const ConditionId = uuid().meta({ id: "ConditionId" });
export const CheckId = uuid().meta({ id: "CheckId" });
export const DispositionId = uuid().meta({ id: "DispositionId" });
export const ConfirmationId = uuid().meta({ id: "ConfirmationId" });
export const SealIssueId = uuid().meta({ id: "SealIssueId" });
export const FileId = uuid().meta({ id: "FileId" });
export const SurveyedContainerId = uuid().meta({ id: "SurveyedContainerId" });
export const SurveyLimitsId = uuid().meta({ id: "SurveyLimitsId" });
export const SiteWordId = uuid().meta({ id: "SiteWordId" });
export const OptionSetId = uuid().meta({ id: "OptionSetId" });
export const OptionId = uuid().meta({ id: "OptionId" });
export const StepId = uuid().meta({ id: "StepId" });
export const InvitationId = uuid().meta({ id: "InvitationId" });
export const DecisionId = uuid().meta({ id: "DecisionId" });
export const RevisionId = uuid().meta({ id: "RevisionId" });

/** Made by the client, so that an act sent twice is one act. */
export const ActId = uuid().meta({ id: "ActId" });

/** Made by the client that draws the element; unique in the scheme over every kind. */
export const ElementId = z
  .string()
  .regex(/^[a-z0-9][a-z0-9-]{0,39}$/, "1 to 40 of a–z, 0–9 and hyphen, starting with a letter or figure")
  .meta({ id: "ElementId" });

export type ProjectId = z.infer<typeof ProjectId>;
export type PersonId = z.infer<typeof PersonId>;
export type ActId = z.infer<typeof ActId>;
export type ElementId = z.infer<typeof ElementId>;
export type NoteId = z.infer<typeof NoteId>;
export type RequestId = z.infer<typeof RequestId>;
export type StampId = z.infer<typeof StampId>;

/** SHA-256 as 64 lowercase hexadecimal digits. */
export const Digest = z
  .string()
  .regex(/^[0-9a-f]{64}$/, "64 hexadecimal digits")
  .meta({ id: "Digest" });
export type Digest = z.infer<typeof Digest>;

/** The part of a token that may be seen: enough to know it again, not enough to use it. */
export const TokenPrefix = z
  .string()
  .regex(/^cw_[0-9a-f]{8}$/)
  .meta({ id: "TokenPrefix" });
