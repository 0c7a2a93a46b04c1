import { z } from "zod";
import { CheckId, Digest } from "./ids.ts";
import { mostConditions, NewCondition } from "./new-condition.ts";
import { Author, Moment, RevisionLetter } from "./review.ts";
import { Standing } from "./standing.ts";
import { personText } from "./text.ts";

/** What a second engineer finds: agreement, or points that stay open until the checker closes each. */
export const checkOutcomes = ["agrees", "points open"] as const;

const found = {
  id: CheckId,
  revision: RevisionLetter,
  contentDigest: Digest,
  resultDigest: Digest,
  outcome: z.enum(checkOutcomes),
  /** What was checked, and how: loads, load path, which members by other means. */
  text: personText(4000),
  /** None where the checker agrees. */
  points: z.array(NewCondition).max(mostConditions),
};

export const NewCheck = z.strictObject(found).meta({ id: "NewCheck" });
export type NewCheck = z.infer<typeof NewCheck>;

/** An independent check of one revision and its result, by someone who neither drew nor judged in the project. */
export const Check = z
  .strictObject({ ...found, number: z.int().min(1), author: Author, checkedAt: Moment })
  .meta({ id: "Check" });
export type Check = z.infer<typeof Check>;

export const CheckNow = z.strictObject({ check: Check, standing: Standing }).meta({ id: "CheckNow" });
export type CheckNow = z.infer<typeof CheckNow>;
