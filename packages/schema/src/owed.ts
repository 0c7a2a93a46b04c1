import { z } from "zod";
import { ProjectId } from "./ids.ts";
import { Day } from "./question.ts";
import { Moment } from "./review.ts";
import { Role } from "./roles.ts";

/** One thing that a role owes another in a project, as the desk lists it. */
export const Owed = z
  .strictObject({
    projectId: ProjectId,
    projectName: z.string(),
    what: z.enum([
      ...["answer", "information", "question to close", "condition", "condition to close", "change", "price to agree"],
      ...["container to judge", "container to repair", "survey to draw"],
      ...["site item to build", "difference to judge"],
    ] as const),
    /** The number of the question, the condition, the change request, the surveyed container or the word from the site. */
    number: z.int().min(1),
    text: z.string(),
    owedBy: Role,
    owedTo: Role,
    /** The day by which it is needed; null where none was named. */
    neededBy: Day.nullable(),
    since: Moment,
  })
  .meta({ id: "Owed" });
export type Owed = z.infer<typeof Owed>;
