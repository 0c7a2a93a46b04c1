import { z } from "zod";
import { Moment } from "./review.ts";
import { personLine } from "./text.ts";

/** What marks a change on a drawing that comes again: some authorities ask for clouds with deltas, others for a clean set. */
export const changeMarks = ["clouds and deltas", "deltas", "none"] as const;
/** What stands in a delta: the letter of the revision, or how often the set came again. */
export const deltaSigns = ["revision letter", "issue number"] as const;
/** Where a reply says it is found, beside the sheet, which every reply names. */
export const replyPlaces = ["detail", "page"] as const;

/** How the authority that checks the plans wants a set that comes again to be marked and its comments answered. */
export const AuthorityProfile = z
  .strictObject({
    name: personLine(120).nullable(),
    marks: z.enum(changeMarks),
    delta: z.enum(deltaSigns),
    /** Whether the number of the change, as in the list, stands beside its delta. */
    numbered: z.boolean(),
    /** Whether deltas of sets before stay when their clouds are taken off. */
    earlierDeltas: z.enum(["taken off", "stay"]),
    replyNames: z.array(z.enum(replyPlaces)).max(replyPlaces.length),
  })
  .meta({ id: "AuthorityProfile" });
export type AuthorityProfile = z.infer<typeof AuthorityProfile>;

/**
 * Until someone says otherwise. Clouds and deltas of this set alone are common practice; what each authority asks is
 * written in its own checklist.
 */
export const usualAuthority: AuthorityProfile = {
  name: null,
  marks: "clouds and deltas",
  delta: "revision letter",
  numbered: true,
  earlierDeltas: "taken off",
  replyNames: [],
};

/** The profile of a project, and who laid it down, by name; null where nobody did. */
export const ProjectAuthority = z
  .strictObject({ profile: AuthorityProfile, set: z.strictObject({ by: z.string(), at: Moment }).nullable() })
  .meta({ id: "ProjectAuthority" });
export type ProjectAuthority = z.infer<typeof ProjectAuthority>;
