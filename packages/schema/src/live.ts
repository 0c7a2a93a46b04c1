import { z } from "zod";
import { ElementId, PersonId } from "./ids.ts";
import { PointMm } from "./mark.ts";
import { Operation } from "./operation.ts";
import { AssessmentRun } from "./project.ts";
import { RecordEntry } from "./record-entry.ts";
import { Role } from "./roles.ts";

/** Where a hand points: on which view, and at which place of the site. */
export const Pointer = z
  .strictObject({ projection: z.enum(["south", "north", "east", "west", "plan"]), at: PointMm })
  .meta({ id: "Pointer" });
export type Pointer = z.infer<typeof Pointer>;

/** Passing things: who is here, what they hold. Never in the record; expires 15 s after the last word. */
export const Presence = z
  .strictObject({
    sheet: z.int().min(1).max(7),
    selected: ElementId.nullable(),
    /** A drag in progress, as the operations its drop would send. */
    dragging: z.array(Operation).max(20).nullable(),
    /** Absent where the hand is off the drawing. */
    pointer: Pointer.exactOptional(),
  })
  .meta({ id: "Presence" });
export type Presence = z.infer<typeof Presence>;
export const presenceLastsMs = 15_000;

/** Client to server. `resume` asks for every entry after a number; it is the first message on every connection. */
export const ClientMessage = z
  .discriminatedUnion("type", [
    z.strictObject({ type: z.literal("resume"), after: z.int().min(0) }),
    z.strictObject({ type: z.literal("presence"), presence: Presence }),
    z.strictObject({ type: z.literal("ping") }),
  ])
  .meta({ id: "ClientMessage" });
export type ClientMessage = z.infer<typeof ClientMessage>;

/** Why the server ends a connection, and what its client does next. */
export const liveCloseCodes = {
  /** RFC 6455 section 7.4.1: the service goes away; come back, to another process. */
  goingAway: 1001,
  /** RFC 6455 section 7.4.1: what was sent is against the rules. */
  againstRules: 1008,
  /** Registered with IANA: try again later. */
  tooSlow: 1013,
  /** Signed out, or the roles changed: ask again who you are. */
  signedOut: 4401,
  /** The record does not go that far: load the project anew. */
  recordUnknown: 4409,
} as const;

/** Server to client. `entries` come in order without gaps, less those the reader may not see; `upTo` says how far. */
export const ServerMessage = z
  .discriminatedUnion("type", [
    z.strictObject({ type: z.literal("entries"), entries: z.array(RecordEntry), upTo: z.int().min(0) }),
    z.strictObject({
      type: z.literal("here"),
      people: z.array(
        z.strictObject({
          connection: z.string(),
          personId: PersonId,
          name: z.string(),
          role: Role,
          presence: Presence.nullable(),
        }),
      ),
    }),
    /** How far the assessment of a revision is. Passing: its end is told by the record. */
    z.strictObject({ type: z.literal("assessing"), run: AssessmentRun }),
    z.strictObject({ type: z.literal("pong") }),
    z.strictObject({ type: z.literal("problem"), code: z.string(), detail: z.string() }),
  ])
  .meta({ id: "ServerMessage" });
export type ServerMessage = z.infer<typeof ServerMessage>;
