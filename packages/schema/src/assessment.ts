import { z } from "zod";
import { ElementId } from "./ids.ts";
import { Mark, PointMm } from "./mark.ts";
import { FittingName, MemberName } from "./part-names.ts";
import { Verdict } from "./verdict.ts";

/** What a bottom fitting or a rail crossing finds beneath it, with the offset in plan and the gap in height. */
export const Bearing = z
  .strictObject({
    id: z.string(),
    unitId: ElementId,
    /** Absent at a rail crossing away from the corners. */
    fitting: FittingName.optional(),
    at: PointMm,
    on: z.enum(["fitting", "rail", "post", "beam", "pad", "ground", "sheet", "air"]),
    onElementId: ElementId.optional(),
    offsetXMm: z.number(),
    offsetYMm: z.number(),
    gapMm: z.number(),
    /** What can join the two: the stock lock, a made connection, a seat with packing, plain bearing, or nothing. */
    joint: z.enum(["lock", "made connection", "seat", "bearing", "none"]),
    /** The seat drawn there, and the seat or lock that holds it down, where there are any. */
    seatId: ElementId.optional(),
    heldById: ElementId.optional(),
    /**
     * Share of vertical load by statics alone (rigid unit on its bearings), kN; the split is not known. Negative only
     * where it is held down: a pull.
     */
    forceKn: z.number(),
  })
  .meta({ id: "Bearing" });
export type Bearing = z.infer<typeof Bearing>;

/** One length of the way down, with the force in it by statics. Drawn as a stroke whose width is the force; a pull is negative. */
export const PathStretch = z
  .strictObject({
    id: z.string(),
    elementId: ElementId,
    via: z.enum(["corner post", "added post", "rail", "beam", "seat", "pad"]),
    member: MemberName.optional(),
    from: PointMm,
    to: PointMm,
    forceTopKn: z.number(),
    forceFootKn: z.number(),
    /** True where the load leaves the container's own corner posts. */
    leavesCorners: z.boolean(),
  })
  .meta({ id: "PathStretch" });
export type PathStretch = z.infer<typeof PathStretch>;

/** What was judged: how the load comes down, or its strength as well, under which loads. */
export const assessmentScopes = [
  "load path only, no strength checked",
  "load path, and strength under gravity loads",
  "load path, and strength under all loads",
] as const;

export const Assessment = z
  .strictObject({
    engineVersion: z.string(),
    verdict: Verdict,
    /** What was and was not judged; printed with every verdict. */
    scope: z.enum(assessmentScopes),
    units: z.array(
      z.strictObject({ id: ElementId, storey: z.int(), verdict: Verdict, weightKn: z.number(), imposedKn: z.number() }),
    ),
    bearings: z.array(Bearing),
    path: z.array(PathStretch),
    marks: z.array(Mark),
    statics: z.strictObject({
      loadKn: z.number(),
      reactionKn: z.number(),
      residualKn: z.number(),
      reactions: z.array(z.strictObject({ elementId: ElementId, at: PointMm, forceKn: z.number() })),
    }),
    /** Geometric and static questions asked and answered. */
    questions: z.int(),
    /** How strength was judged; absent where it was not. What it found is in the report, by the same run. */
    strength: z
      .strictObject({
        /** Load vectors solved, over all assumptions, and checks made. */
        vectors: z.int(),
        checks: z.int(),
        envelope: z.array(z.strictObject({ assumptions: z.string(), runs: z.int(), withoutEquilibrium: z.int() })),
        assumed: z.array(z.string()),
        notJudged: z.array(z.string()),
      })
      .exactOptional(),
    /** Why strength could not be judged: hazards that the adopted edition does not take. */
    strengthRefused: z.array(z.string()).min(1).exactOptional(),
  })
  .meta({ id: "Assessment" });
export type Assessment = z.infer<typeof Assessment>;
