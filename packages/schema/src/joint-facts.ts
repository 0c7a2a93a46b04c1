import { z } from "zod";
import { ElementId } from "./ids.ts";
import { lockKinds } from "./joints.ts";
import { MemberName } from "./part-names.ts";

/** What a tie meets on the face of a unit. */
export const tieMeets = ["corner fitting", "corner post", "top rail", "bottom rail"] as const;

/** Why a lock, made connection or hold-down cannot be put where it is drawn. */
export const lockRefusals = [
  "apertures cross",
  "hole centres apart",
  "bears off the corner",
  "gap to pack",
  "not on a fitting",
  "not on a pad",
  "on bare ground",
  "nothing under it",
  "joined already",
] as const;

/** What the engine notes of beams, seats, ties, locks, sections, overrides and free loads. Lengths in mm, forces in kN. */
export const jointFacts = [
  /** Fittings or rails of a unit come down on beams; `offAxisMm` is how far beside their middle at most. */
  z.strictObject({
    kind: z.literal("borne-on-beam"),
    places: z.int(),
    forceKn: z.number(),
    offAxisMm: z.number(),
    gapMm: z.number(),
  }),
  /** All that comes down on a beam, its longest span and the largest moment, spans taken as simply supported. */
  z.strictObject({
    kind: z.literal("beam-carries"),
    forceKn: z.number(),
    spanMm: z.number(),
    momentKnm: z.number(),
    holds: z.array(ElementId),
  }),
  z.strictObject({ kind: z.literal("beam-holds-nothing") }),
  /** An end this far past the last support; with fewer than two supports the beam has no equilibrium. */
  z.strictObject({ kind: z.literal("beam-end-without-support"), supports: z.int(), pastMm: z.number() }),
  /** What it carries past a support lifts it off another by this much; `tips` where nothing else keeps it down. */
  z.strictObject({ kind: z.literal("beam-lifts"), upliftKn: z.number(), tips: z.boolean() }),
  /** A beam drawn where a unit is: through a member, or through sheet, floor or roof only. */
  z.strictObject({ kind: z.literal("beam-through-unit"), through: z.union([MemberName, z.literal("sheet")]) }),
  /** A seat with nothing to lie on, nothing that comes down on it, or neither. */
  z.strictObject({
    kind: z.literal("seat-without-bearing"),
    lacks: z.enum(["a member under it", "a whole rail under it", "a member over it", "both"]),
  }),
  /** The packing of a seat does not fill its gap: what is left is clear, or it is too thick by so much (negative). */
  z.strictObject({
    kind: z.literal("seat-packing"),
    gapMm: z.number(),
    packingMm: z.number(),
    leftMm: z.number(),
  }),
  /** A seat whose plate reaches past the edge of what it lies on; its middle is `offMm` off that member's. */
  z.strictObject({ kind: z.literal("seat-off-rail"), offMm: z.number(), pastMm: z.number() }),
  /** A tie that serves: the gap it bridges and what it meets on either unit. */
  z.strictObject({
    kind: z.literal("tie-joins"),
    gapMm: z.number(),
    meets: z.tuple([z.enum(tieMeets), z.enum(tieMeets)]),
    upright: z.boolean(),
  }),
  z.strictObject({
    kind: z.literal("tie-cannot-serve"),
    why: z.enum(["out of reach", "not side by side", "on sheet", "in an opening"]),
    /** From the tie to the farther of the two units, in plan. */
    awayMm: z.number(),
  }),
  z.strictObject({
    kind: z.literal("lock-cannot-serve"),
    lockKind: z.enum(lockKinds),
    why: z.enum(lockRefusals),
    offsetMm: z.number(),
  }),
  /** The catalogue has no section of this name. */
  z.strictObject({
    kind: z.literal("section-unknown"),
    part: z.enum(["post", "beam", "jamb", "header", "sill", "override"]),
    name: z.string(),
  }),
  z.strictObject({
    kind: z.literal("override-misfits"),
    why: z.enum(["names no part", "has no such part", "said twice"]),
    member: MemberName.optional(),
  }),
  /** A free load drawn this far past the outline of the unit it acts on. */
  z.strictObject({
    kind: z.literal("load-off-unit"),
    surface: z.enum(["floor", "roof"]),
    pastMm: z.number(),
  }),
] as const;
