import { z } from "zod";
import { ElementId } from "./ids.ts";
import { jointFacts } from "./joint-facts.ts";
import { FittingName, MemberName } from "./part-names.ts";
import { cutStages, Face } from "./scheme.ts";
import { strengthFacts } from "./strength-fact.ts";
import { Certainty, Verdict } from "./verdict.ts";

/** Millimetres in the site frame, z up. */
export const PointMm = z.strictObject({ xMm: z.number(), yMm: z.number(), zMm: z.number() }).meta({ id: "PointMm" });
export type PointMm = z.infer<typeof PointMm>;

export const compassPoints = ["north", "south", "east", "west"] as const;
export const CompassPoint = z.enum(compassPoints).meta({ id: "CompassPoint" });
export type CompassPoint = z.infer<typeof CompassPoint>;

/** How a wall with openings stands to the 50 % and 4 ft conditions of the code; roofs, floors and door ends are no wall. */
export const wallRuleResults = [
  "keeps both",
  "more than half cut",
  "pier under 4 ft",
  "more than half cut and pier under 4 ft",
  "not a wall",
] as const;

/** How all openings of one wall together stand to the conditions of the code; lengths in mm. */
export const WallFacts = z
  .strictObject({
    /** Share of the wall's length cut away by all openings of that face, 0 to 1. */
    cutShare: z.number(),
    /** The shortest full-height piece left; 0 where none is. */
    shortestPierMm: z.number(),
    wallRule: z.enum(wallRuleResults),
  })
  .meta({ id: "WallFacts" });
export type WallFacts = z.infer<typeof WallFacts>;

/** When the sheet is cut; absent in answers of engine 0.2.0 and before. */
const CutFact = { cut: z.enum(["in the yard", ...cutStages]).optional() };

/**
 * What is drawn to hold down a unit that would tip without it: the sum of all pulls, and how many of the mark's last
 * elements pull. Absent where nothing has to.
 */
const HeldFact = {
  heldDownKn: z.number().optional(),
  heldBy: z.int().optional(),
};

/** What the engine notes, by kind, each with the facts its sentences are made of. Lengths in mm, forces in kN. */
export const MarkFact = z
  .discriminatedUnion("kind", [
    /** Uncut and borne fitting on fitting (or fitting on pad) all the way down. */
    z.strictObject({ kind: z.literal("borne-on-fittings"), heaviestPostKn: z.number() }),
    /** Part of a unit beyond its bearings; `tailReactionKn` < 0 is an uplift: it tips over unless held down. */
    z.strictObject({
      kind: z.literal("overhang"),
      lengthMm: z.number(),
      towards: CompassPoint,
      bearingKn: z.number(),
      tailReactionKn: z.number(),
      ...HeldFact,
    }),
    /** A bottom fitting or rail comes down on a rail away from the corners below. */
    z.strictObject({
      kind: z.literal("borne-on-rail"),
      crossings: z.array(
        z.strictObject({
          at: PointMm,
          forceKn: z.number(),
          toNearestFittingMm: z.number(),
          /** To pack; where a seat is drawn, what its packing leaves. */
          gapMm: z.number(),
          /** The seat drawn there, if one is. */
          seatId: ElementId.optional(),
        }),
      ),
      turned: z.boolean(),
    }),
    /** A fitting stands on a fitting, but not where or how the stock lock needs it. */
    z.strictObject({
      kind: z.literal("made-connection"),
      why: z.enum(["apertures cross", "hole centres apart", "bears off the corner"]),
      offsetMm: z.number(),
      /** Corners of the pair that need one, and at how many it is drawn; absent in answers of engine 0.2.0 and before. */
      corners: z.int().optional(),
      drawn: z.int().optional(),
    }),
    /** Nothing holds this corner: air below. */
    z.strictObject({
      kind: z.literal("corner-on-air"),
      fitting: FittingName,
      over: z.enum(["air", "sheet"]),
      dropMm: z.number(),
    }),
    /**
     * The resultant of its weight and all it carries comes down outside its bearings, or on their very edge (0): it tips,
     * or something drawn holds it down.
     */
    z.strictObject({
      kind: z.literal("tips-over"),
      /** It stands only while imposed loads hold it down: the figures are those without them. */
      whenEmpty: z.literal(true).optional(),
      outsideMm: z.number(),
      weightKn: z.number(),
      /** What would have to be held down: the resultant times its distance outside. */
      momentKnm: z.number(),
      towards: CompassPoint,
      ...HeldFact,
    }),
    /** It stands, but its resultant comes down within 0.3 m of the edge of its bearings. */
    z.strictObject({
      kind: z.literal("near-tipping"),
      /** So near only without imposed loads: the figures are those without them. */
      whenEmpty: z.literal(true).optional(),
      insideMm: z.number(),
      weightKn: z.number(),
      towards: CompassPoint,
    }),
    /** Its bearings lie at two heights, this far apart: it rocks until packed. */
    z.strictObject({ kind: z.literal("rocks"), gapMm: z.number() }),
    /** Drawn this far above what is to bear it, at so many places: they take nothing until packed. */
    z.strictObject({ kind: z.literal("stands-clear"), gapMm: z.number(), places: z.int() }),
    /** So many corner fittings reach past the edge of their pad, by as much as this. */
    z.strictObject({ kind: z.literal("off-its-pad"), corners: z.int(), pastMm: z.number() }),
    /** Free to move as a body: the direction it slides or turns; lifted off by what it is to hold down. */
    z.strictObject({
      kind: z.literal("mechanism"),
      direction: z.enum(["slides", "turns", "falls", "lifts"]),
      ...HeldFact,
    }),
    z.strictObject({ kind: z.literal("collision"), depthMm: z.number() }),
    z.strictObject({ kind: z.literal("member-cut"), member: MemberName, face: Face, ...CutFact }),
    /** The load of what stands above comes down where the sheet below is cut. */
    z.strictObject({
      kind: z.literal("load-over-opening"),
      forceKn: z.number(),
      /** True where the opening takes the top rail as well, so that nothing at all is left beneath. */
      railCut: z.boolean(),
    }),
    /** A hole in a sheet that leaves every protected member; what it does to the sheet is not judged yet. */
    z.strictObject({
      kind: z.literal("opening-in-sheet"),
      face: Face,
      widthMm: z.number(),
      toFrontPostMm: z.number(),
      toDoorPostMm: z.number(),
      /** Not framed: over so much beside each upright edge the sheet is taken to carry nothing. */
      bareMm: z.number().optional(),
      ...CutFact,
      ...WallFacts.shape,
    }),
    z.strictObject({
      kind: z.literal("wall-out"),
      face: Face,
      widthMm: z.number(),
      joins: z.boolean(),
      ...CutFact,
      /** Absent in answers of engine 0.1.0. */
      wall: WallFacts.optional(),
    }),
    z.strictObject({ kind: z.literal("openings-overlap") }),
    z.strictObject({ kind: z.literal("opening-off-face"), face: Face }),
    /** A hatch that gives onto the floor or roof of the unit it meets: no opening there, or one not in line with it. */
    z.strictObject({
      kind: z.literal("hatch-blocked"),
      by: z.enum(["roof", "floor"]),
      /** Least clear width left between the two openings; 0 where there is none on the other side. */
      clearMm: z.number(),
    }),
    z.strictObject({ kind: z.literal("cross-members-cut"), count: z.int(), ...CutFact }),
    z.strictObject({ kind: z.literal("post-without-ground"), under: z.enum(["air", "rail", "sheet", "ground"]) }),
    z.strictObject({ kind: z.literal("post-holds-nothing") }),
    z.strictObject({ kind: z.literal("post-carries"), forceKn: z.number(), holds: z.array(ElementId) }),
    /** What it holds comes down beside its middle, or it stands beside the middle of its pad. */
    z.strictObject({
      kind: z.literal("post-off-centre"),
      end: z.enum(["head", "foot"]),
      offsetMm: z.number(),
      /** Its force by statics times the offset, kN m: carried by nothing in the run-down. */
      momentKnm: z.number(),
    }),
    z.strictObject({ kind: z.literal("post-through-opening") }),
    /** A post drawn where a container has a member, or through its roof or floor. */
    z.strictObject({ kind: z.literal("post-through-unit"), through: z.union([MemberName, z.enum(["roof", "floor"])]) }),
    /** Its underside lies this far below the ground level of the site. */
    z.strictObject({ kind: z.literal("below-ground"), depthMm: z.number() }),
    z.strictObject({ kind: z.literal("pad-missing"), corners: z.int() }),
    z.strictObject({ kind: z.literal("pad-holds-nothing") }),
    /** The underside of a pad lies this far above the ground and on no other pad. */
    z.strictObject({ kind: z.literal("pad-off-ground"), aboveMm: z.number() }),
    /** Uncut and corner on corner, but what it stands on is not settled. */
    z.strictObject({ kind: z.literal("below-not-settled") }),
    ...strengthFacts,
    ...jointFacts,
  ])
  .meta({ id: "MarkFact" });
export type MarkFact = z.infer<typeof MarkFact>;
export type MarkKind = MarkFact["kind"];
/** The facts of one kind of mark. */
export type FactOf<K extends MarkKind> = Extract<MarkFact, { kind: K }>;

/**
 * What the engine notes on a scheme: where, what, why. `id` is the kind and the element ids, so that a thread or a
 * decision stays with it from revision to revision.
 */
export const Mark = z
  .strictObject({
    id: z.string().max(400),
    verdict: Verdict,
    certainty: Certainty,
    /** What it concerns, most concerned first. */
    elements: z.array(ElementId).min(1),
    at: PointMm,
    fact: MarkFact,
    /** The rule or clause it rests on, for the engineer's eyes. */
    basis: z.string(),
  })
  .meta({ id: "Mark" });
export type Mark = z.infer<typeof Mark>;
