import { z } from "zod";
import { ElementId } from "./ids.ts";
import { RevisionLetter } from "./review.ts";

/** Results of an assessment that a judgement on an element rests on. */
export const coveredResults = ["verdict", "bearings", "load path", "reactions", "marks"] as const;

/** What concerns every element of a scheme at once. */
export const coveredWhole = [
  "site and code edition",
  "design basis",
  "engine version",
  "result cannot be read",
] as const;

/** What has changed in what a judgement covers, from the revision it was given for to the newest. */
export const CoverChange = z
  .strictObject({
    /** Elements added, taken away or altered. */
    elements: z.array(ElementId),
    results: z.array(z.enum(coveredResults)),
    whole: z.array(z.enum(coveredWhole)),
    /** Elements of which survey or site have found something else than the newest revision draws; absent where of none. */
    found: z.array(ElementId).exactOptional(),
  })
  .meta({ id: "CoverChange" });
export type CoverChange = z.infer<typeof CoverChange>;

/**
 * How a judgement bound to one revision stands to the newest: it `stands` where nothing it covers has changed, is `stale`
 * where something has, and `waits` where the newest revision has no result yet and its drawing alone changes nothing covered.
 */
export const Standing = z
  .strictObject({
    state: z.enum(["stands", "waits", "stale"]),
    /** The revision it was given for, and the one it is held against. */
    revision: RevisionLetter,
    newest: RevisionLetter,
    changed: CoverChange,
  })
  .meta({ id: "Standing" });
export type Standing = z.infer<typeof Standing>;
