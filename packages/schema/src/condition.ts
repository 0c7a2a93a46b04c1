import { z } from "zod";
import { StepId } from "./ids.ts";
import { NewCondition } from "./new-condition.ts";
import { Author, Moment, RevisionLetter } from "./review.ts";
import { Role } from "./roles.ts";
import { personText } from "./text.ts";

const done = { id: StepId, by: Author, at: Moment };

export const ConditionStep = z
  .discriminatedUnion("step", [
    z.strictObject({ step: z.literal("met"), ...done, text: personText(2000) }),
    z.strictObject({ step: z.literal("closed"), ...done }),
    z.strictObject({ step: z.literal("reopened"), ...done, text: personText(2000) }),
  ])
  .meta({ id: "ConditionStep" });
export type ConditionStep = z.infer<typeof ConditionStep>;

export const conditionStates = ["open", "met", "closed"] as const;
export const ConditionState = z.enum(conditionStates).meta({ id: "ConditionState" });
export type ConditionState = z.infer<typeof ConditionState>;

export const ConditionSource = z.enum(["answer", "stamp", "check"]).meta({ id: "ConditionSource" });
export type ConditionSource = z.infer<typeof ConditionSource>;

/** A condition stays open over every later revision until the role that raised it closes it. */
export const Condition = z
  .strictObject({
    ...NewCondition.shape,
    number: z.int().min(1),
    /** What it was written on, by kind and id, and the revision that was about. */
    source: ConditionSource,
    sourceId: z.uuid(),
    revision: RevisionLetter,
    author: Author,
    raisedAt: Moment,
    steps: z.array(ConditionStep),
  })
  .meta({ id: "Condition" });
export type Condition = z.infer<typeof Condition>;

export const ConditionNow = Condition.extend({
  state: ConditionState,
  /** Whoever acts next: the role that owes it while it is open, the one that raised it once it is met. */
  waitsFor: Role.nullable(),
}).meta({ id: "ConditionNow" });
export type ConditionNow = z.infer<typeof ConditionNow>;

/** What the role that owes a condition says of it: how it is met. */
export const MeetCondition = z.strictObject({ id: StepId, text: personText(2000) }).meta({ id: "MeetCondition" });
export type MeetCondition = z.infer<typeof MeetCondition>;

/** What the role that raised it does then. */
export const JudgeCondition = z
  .discriminatedUnion("step", [
    z.strictObject({ step: z.literal("closed"), id: StepId }),
    z.strictObject({ step: z.literal("reopened"), id: StepId, text: personText(2000) }),
  ])
  .meta({ id: "JudgeCondition" });
export type JudgeCondition = z.infer<typeof JudgeCondition>;
