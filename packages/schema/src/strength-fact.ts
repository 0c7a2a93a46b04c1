import { z } from "zod";

/** A square pad, mm. */
export const PadSize = z.strictObject({ sideMm: z.number(), depthMm: z.number() });

/** One part that was judged: what, where, by which check, in which run, and between which utilisations over the envelope. */
export const JudgedPart = z
  .strictObject({
    /** Names its working in the answer. */
    partId: z.string().max(400),
    part: z.string(),
    place: z.string(),
    check: z.string(),
    /** Null where no strength can be stated. */
    utilisation: z.number().nullable(),
    /** The same at 343 MPa, if proved; only where the steel has no record. */
    ifProved: z.number().optional(),
    /** Utilisation of the upper of two bounds. */
    upperBound: z.number().optional(),
    /** The least square pad under which it would stand, mm. */
    wouldDo: PadSize.optional(),
    /** Combination and cases that govern. */
    run: z.string(),
    /** Least and greatest over the assumptions solved, each with its name; absent where one alone was. */
    envelope: z
      .strictObject({ least: z.number(), leastIn: z.string(), most: z.number().nullable(), mostIn: z.string() })
      .optional(),
  })
  .meta({ id: "JudgedPart" });
export type JudgedPart = z.infer<typeof JudgedPart>;

/** Why strength leaves a part to the engineer. */
export const partQuestions = [
  "an assumption decides",
  "beyond its lower bound",
  "no strength stated",
  "not covered",
  "over once held",
] as const;

/** Why strength leaves a unit to the engineer whatever its parts say. */
export const unitQuestions = [
  "wind outside its limits",
  "no earthquake system",
  "irregular against earthquakes",
  "no wall of its own counts sideways",
  "left out of the model",
  "no equilibrium even held",
] as const;

/** Limits of the directional wind procedure that a building's form may break. */
export const windShapeLimits = [
  "rectangular plan",
  "one roof level",
  "parallel to the axes",
  "closed below",
  "one block",
  "rigid",
  "height for components",
] as const;

/** Which way of a unit: along its sides, or along its ends. */
export const lateralWays = ["lengthwise", "crosswise"] as const;

/** Which loads a strength that is adequate was judged under. */
export const strengthScopes = ["gravity loads only", "all loads"] as const;

const Places = z.array(z.string()).min(1);

/** What strength notes, one of each kind for a unit. The worst parts are told; `more` counts the others. */
export const strengthFacts = [
  /** Beyond their strength under every assumption. */
  z.strictObject({ kind: z.literal("overstressed"), parts: z.array(JudgedPart).min(1), more: z.int() }),
  z.strictObject({
    kind: z.literal("strength-open"),
    parts: z.array(z.strictObject({ why: z.enum(partQuestions), ...JudgedPart.shape })),
    more: z.int(),
    others: z.array(z.enum(unitQuestions)),
    /** Limits of the wind procedure that do not hold, each; absent where all do. */
    windLimits: z.array(z.enum(windShapeLimits)).min(1).optional(),
  }),
  z.strictObject({
    kind: z.literal("strength-adequate"),
    under: z.enum(strengthScopes),
    governing: JudgedPart,
    /** Parts judged. */
    parts: z.int(),
  }),
  /** Pulled at these places, where nothing drawn holds it down; the greatest pull at one, factored. */
  z.strictObject({ kind: z.literal("uplift"), places: Places, forceKn: z.number(), run: z.string() }),
  /** Pushed sideways beyond friction, factored; friction counts for nothing in earthquakes. */
  z.strictObject({
    kind: z.literal("slides"),
    places: Places,
    forceKn: z.number(),
    frictionKn: z.number(),
    run: z.string(),
  }),
  /** No wall of its storey counts this way; by wall what takes it out, in the code's words. */
  z.strictObject({
    kind: z.literal("no-lateral-wall"),
    way: z.enum(lateralWays),
    walls: z.array(z.strictObject({ face: z.enum(["left", "right", "front", "door"]), fails: z.array(z.string()) })),
  }),
] as const;

export type StrengthKind = z.infer<(typeof strengthFacts)[number]>["kind"];
