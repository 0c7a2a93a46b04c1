import { z } from "zod";
import { ContainerNumber } from "./container-number.ts";
import { Digest, ElementId, FileId, StepId, SurveyedContainerId } from "./ids.ts";
import { mostPhotos } from "./kept-file.ts";
import { MemberName } from "./part-names.ts";
import { PositiveLengthUm } from "./quantity.ts";
import { Day } from "./question.ts";
import { Author, Moment } from "./review.ts";
import { ContainerType } from "./scheme.ts";
import { Tag, personLine, personText } from "./text.ts";

/** A kept photo, with the digest of its bytes as whoever shows it saw them. */
export const Photo = z.strictObject({ fileId: FileId, digest: Digest }).meta({ id: "Photo" });
export type Photo = z.infer<typeof Photo>;

const Month = z.string().regex(/^\d{4}-(0[1-9]|1[0-2])$/, "a year and a month, such as 2019-04");

/** What the safety approval plate of the container says (CSC plate, regulation 1 and annex I); null where it cannot be read. */
export const PlateFacts = z
  .strictObject({
    approvalNumber: personLine(60).nullable(),
    madeIn: Month.nullable(),
    tareKg: z.int().min(500).max(10_000).nullable(),
    maxGrossKg: z.int().min(2000).max(60_000),
    /** Allowable stacking load at 1.8 g. */
    stackingKg: z.int().min(0).max(500_000),
    /** Force of the transverse racking test. */
    rackingN: z.int().min(0).max(1_000_000).nullable(),
  })
  .refine(({ tareKg, maxGrossKg }) => tareKg === null || tareKg < maxGrossKg, {
    path: ["tareKg"],
    message: "an empty container weighs less than a full one",
  })
  .meta({ id: "PlateFacts" });
export type PlateFacts = z.infer<typeof PlateFacts>;

/** `bent`: how deep, measured from where it should run. `torn`: how long the cut, crack or tear is. */
export const damageKinds = ["bent", "torn"] as const;
export const DamageKind = z.enum(damageKinds).meta({ id: "DamageKind" });
export type DamageKind = z.infer<typeof DamageKind>;

export const Damage = z
  .strictObject({ member: MemberName, place: personLine(120), kind: DamageKind, sizeUm: PositiveLengthUm })
  .meta({ id: "Damage" });
export type Damage = z.infer<typeof Damage>;

/** The least thickness measured of a member, over all places of it in this container. */
export const MeasuredThickness = z
  .strictObject({ member: MemberName, thicknessUm: PositiveLengthUm.max(30_000) })
  .meta({ id: "MeasuredThickness" });
export type MeasuredThickness = z.infer<typeof MeasuredThickness>;

export const mostDamages = 60;

const inspected = {
  step: z.literal("inspected"),
  id: StepId,
  day: Day,
  plate: PlateFacts,
  damages: z.array(Damage).max(mostDamages),
  thicknesses: z
    .array(MeasuredThickness)
    .max(MemberName.options.length)
    .refine((all) => new Set(all.map(({ member }) => member)).size === all.length, "each member once, with its least"),
  /** What the thicknesses were measured with; null where none was. */
  measuredWith: personLine(120).nullable(),
  /** What the plate at the floor says of its treatment, or that there is none. */
  floor: personLine(200).nullable(),
  photos: z.array(Photo).min(1).max(mostPhotos),
  text: personText(2000).nullable(),
};

export const judgements = ["accepted", "repair", "rejected"] as const;
export const SurveyJudgement = z.enum(judgements).meta({ id: "SurveyJudgement" });
export type SurveyJudgement = z.infer<typeof SurveyJudgement>;

const judged = { step: z.literal("judged"), id: StepId, outcome: SurveyJudgement, text: personText(2000).nullable() };
const assigned = { step: z.literal("assigned"), id: StepId, elementId: ElementId };
const released = { step: z.literal("released"), id: StepId, text: personText(2000) };

export const NewInspection = z.strictObject(inspected).meta({ id: "NewInspection" });
export type NewInspection = z.infer<typeof NewInspection>;
export const NewJudgement = z
  .strictObject(judged)
  .refine(({ outcome, text }) => outcome === "accepted" || text !== null, {
    path: ["text"],
    message: "say what is to be repaired, or why it is rejected",
  })
  .meta({ id: "NewJudgement" });
export type NewJudgement = z.infer<typeof NewJudgement>;
export const NewPosition = z
  .discriminatedUnion("step", [z.strictObject(assigned), z.strictObject(released)])
  .meta({ id: "NewPosition" });
export type NewPosition = z.infer<typeof NewPosition>;

const done = { by: Author, at: Moment };

export const SurveyStep = z
  .discriminatedUnion("step", [
    z.strictObject({ ...inspected, ...done }),
    z.strictObject({ ...judged, ...done }),
    z.strictObject({ ...assigned, tag: Tag, ...done }),
    z.strictObject({ ...released, ...done }),
  ])
  .meta({ id: "SurveyStep" });
export type SurveyStep = z.infer<typeof SurveyStep>;
export type Inspection = Extract<SurveyStep, { step: "inspected" }>;

const offered = { id: SurveyedContainerId, containerNumber: ContainerNumber, type: ContainerType };

/** A container that is offered for the building, known by its number (ISO 6346). */
export const NewSurveyedContainer = z.strictObject(offered).meta({ id: "NewSurveyedContainer" });
export type NewSurveyedContainer = z.infer<typeof NewSurveyedContainer>;

export const SurveyedContainer = z
  .strictObject({ ...offered, number: z.int().min(1), author: Author, offeredAt: Moment, steps: z.array(SurveyStep) })
  .meta({ id: "SurveyedContainer" });
export type SurveyedContainer = z.infer<typeof SurveyedContainer>;

export const surveyStates = ["offered", "inspected", ...judgements] as const;
export const SurveyState = z.enum(surveyStates).meta({ id: "SurveyState" });
export type SurveyState = z.infer<typeof SurveyState>;
