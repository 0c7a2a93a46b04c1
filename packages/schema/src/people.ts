import { z } from "zod";
import { InvitationId, PersonId, ProjectId } from "./ids.ts";
import { Moment } from "./review.ts";
import { acts, Role } from "./roles.ts";
import { personLine } from "./text.ts";

/** An engineer's licence as they state it. Nobody here verifies it. */
export const Licence = z
  .strictObject({ number: personLine(60), jurisdiction: personLine(120) })
  .meta({ id: "Licence" });
export type Licence = z.infer<typeof Licence>;

/** One part someone has in a project. An engineer acts once `confirmedAt` is set; a reader's part ends at `expiresAt`. */
export const HeldPart = z
  .strictObject({ role: Role, since: Moment, confirmedAt: Moment.nullable(), expiresAt: Moment.nullable() })
  .meta({ id: "HeldPart" });
export type HeldPart = z.infer<typeof HeldPart>;

export const ProjectMember = z
  .strictObject({
    id: PersonId,
    name: z.string(),
    /** Null for those who may not ask people in. */
    email: z.string().nullable(),
    licence: Licence.nullable(),
    parts: z.array(HeldPart),
  })
  .meta({ id: "ProjectMember" });
export type ProjectMember = z.infer<typeof ProjectMember>;

/** Someone asked in who has not come yet. */
export const Invitation = z
  .strictObject({
    id: InvitationId,
    email: z.string(),
    role: Role,
    invitedBy: z.string(),
    madeAt: Moment,
    expiresAt: Moment,
    /** When the reader's part will end; null for every other role. */
    partEndsAt: Moment.nullable(),
  })
  .meta({ id: "Invitation" });
export type Invitation = z.infer<typeof Invitation>;

/** A link by which someone without an account reads, such as the permit reviewer: until it ends or is withdrawn. */
export const ReaderLink = z
  .strictObject({
    /** Of the reader it stands for. */
    id: PersonId,
    /** For whom it was made. */
    name: z.string(),
    madeBy: z.string(),
    madeAt: Moment,
    expiresAt: Moment,
    /** How often it was opened, and when last. */
    opened: z.int().min(0),
    lastOpenedAt: Moment.nullable(),
  })
  .meta({ id: "ReaderLink" });
export type ReaderLink = z.infer<typeof ReaderLink>;

export const NewReaderLink = z.strictObject({ name: personLine(120), expiresAt: Moment }).meta({ id: "NewReaderLink" });
export type NewReaderLink = z.infer<typeof NewReaderLink>;

/** `path` holds the secret and is told this once. */
export const ReaderLinkMade = z.strictObject({ link: ReaderLink, path: z.string() }).meta({ id: "ReaderLinkMade" });
export type ReaderLinkMade = z.infer<typeof ReaderLinkMade>;

/** How many links of a project are good at a time. */
export const mostReaderLinks = 20;

/** Who has a part in a project. `acts` are those the one who asks may do there, as administrator of the service too. */
export const ProjectPeople = z
  .strictObject({
    project: z.strictObject({ id: ProjectId, name: z.string(), place: z.string() }),
    members: z.array(ProjectMember),
    /** Empty for those who may not ask people in. */
    invitations: z.array(Invitation),
    /** The same. */
    readerLinks: z.array(ReaderLink),
    acts: z.array(z.enum(acts)),
  })
  .meta({ id: "ProjectPeople" });
export type ProjectPeople = z.infer<typeof ProjectPeople>;

/** A reader's part ends: `partEndsAt` is given for a reader and for nobody else. */
export const NewInvitation = z
  .strictObject({ email: z.email().max(254), role: Role, partEndsAt: Moment.nullable() })
  .refine(({ role, partEndsAt }) => (role === "reader") === (partEndsAt !== null), {
    path: ["partEndsAt"],
    message: "a day for a reader, null for everyone else",
  })
  .meta({ id: "NewInvitation" });
export type NewInvitation = z.infer<typeof NewInvitation>;

/**
 * `path` holds the secret and is told once: whoever made the invitation may hand it over. `letterSent` is false where the
 * letter did not leave.
 */
export const InvitationMade = z
  .strictObject({ invitation: Invitation, path: z.string(), letterSent: z.boolean() })
  .meta({ id: "InvitationMade" });
export type InvitationMade = z.infer<typeof InvitationMade>;

export const RemovePart = z.strictObject({ role: Role }).meta({ id: "RemovePart" });
export type RemovePart = z.infer<typeof RemovePart>;

export const SetExpiry = z.strictObject({ expiresAt: Moment }).meta({ id: "SetExpiry" });
export type SetExpiry = z.infer<typeof SetExpiry>;

/** A project as it is started, and the part its starter takes in it, if any. */
export const StartProject = z
  .strictObject({
    name: personLine(120),
    place: personLine(200),
    client: personLine(120),
    ownPart: z.enum(["architect", "owner"]).nullable(),
  })
  .meta({ id: "StartProject" });
export type StartProject = z.infer<typeof StartProject>;

export const ProjectStarted = z.strictObject({ id: ProjectId }).meta({ id: "ProjectStarted" });
export type ProjectStarted = z.infer<typeof ProjectStarted>;

/** What an administrator of the service knows of a project they have no part in. */
export const KeptProject = z
  .strictObject({ id: ProjectId, name: z.string(), place: z.string(), client: z.string(), openedAt: Moment })
  .meta({ id: "KeptProject" });
export type KeptProject = z.infer<typeof KeptProject>;

/** Longest a reader's part may run from now, days. Common practice, no published source. */
export const longestReadingDays = 366;
/** What is offered for it. */
export const usualReadingDays = 90;
