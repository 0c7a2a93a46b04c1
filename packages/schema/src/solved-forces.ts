import { z } from "zod";
import { PointMm } from "./mark.ts";

const Extreme = z.strictObject({
  value: z.number(),
  /** Along the unit from its front posts, across from its middle to the left, up from its underside, mm. */
  at: z.strictObject({ uMm: z.number(), yMm: z.number(), zMm: z.number() }),
  run: z.string(),
});

/**
 * Forces as they were solved for a revision, kept so that they are printed and tabled from the record and never solved
 * anew. kN and kN·m.
 */
export const SolvedForces = z
  .strictObject({
    /** What each bearing on the ground gives to an action case alone, unfactored, east, north and up positive; null where nothing stands. */
    cases: z.array(
      z.strictObject({
        caseId: z.string(),
        symbol: z.string(),
        reactions: z
          .array(
            z.strictObject({
              elementId: z.string(),
              at: PointMm,
              eastKn: z.number(),
              northKn: z.number(),
              upKn: z.number(),
            }),
          )
          .nullable(),
      }),
    ),
    /** Greatest and least of each member over the strength-level runs that stand as drawn; compression positive. */
    members: z.array(
      z.strictObject({
        ...{ ownerId: z.string(), part: z.string(), place: z.string() },
        ...{ pressed: Extreme, pulled: Extreme, shear: Extreme, moment: Extreme },
      }),
    ),
  })
  .meta({ id: "SolvedForces" });
export type SolvedForces = z.infer<typeof SolvedForces>;
