import { z } from "zod";
import { Digest } from "./ids.ts";
import { Author, Moment, RevisionLetter } from "./review.ts";
import { unitSystems } from "./wording/figures.ts";

export const Units = z.enum(unitSystems).meta({ id: "Units" });

/** Asking for the set of a revision: it is printed from the record as it stands when this is taken. */
export const AskForSet = z
  .strictObject({ id: z.uuid(), letter: RevisionLetter, units: Units })
  .meta({ id: "AskForSet" });
export type AskForSet = z.infer<typeof AskForSet>;

/** `refused` is a set whose drawings, schedules and calculations do not agree: nothing is printed of it. */
export const setStates = ["waiting", "done", "refused", "failed", "stopped"] as const;

/** A permit set that was asked for, and how far it is. */
export const PermitSetRun = z
  .strictObject({
    id: z.uuid(),
    letter: RevisionLetter,
    units: Units,
    /** Number of the last entry of the record in it. */
    upTo: z.int().min(1),
    state: z.enum(setStates),
    /** Pages written, of how many; 0 of 0 while they are being laid out. */
    pages: z.strictObject({ done: z.int().min(0), of: z.int().min(0) }),
    leftMs: z.int().nullable(),
    askedBy: Author,
    askedAt: Moment,
    doneAt: Moment.nullable(),
    /** Why there is none, line by line. */
    why: z.string().nullable(),
    setDigest: Digest.nullable(),
    bytes: z.int().nullable(),
  })
  .meta({ id: "PermitSetRun" });
export type PermitSetRun = z.infer<typeof PermitSetRun>;
