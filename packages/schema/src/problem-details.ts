import { z } from "zod";
import { Operation } from "./operation.ts";

/** Where in the body, query or path, as a JSON pointer, and what to do. */
export const FieldProblem = z.strictObject({ pointer: z.string(), detail: z.string() }).meta({ id: "FieldProblem" });

/** RFC 9457 problem details, `application/problem+json`. */
export const Problem = z
  .strictObject({
    type: z.string(),
    title: z.string(),
    status: z.int(),
    code: z.string(),
    /** The id under which the request stands in the log of the service, also in the header `request-id`. */
    requestId: z.string().optional(),
    detail: z.string().optional(),
    fields: z.array(FieldProblem).optional(),
    /** At a draft conflict: who changed what after the base, and what was sent. */
    conflict: z
      .strictObject({
        draftNumber: z.int(),
        elements: z.array(z.string()),
        theirs: z.array(z.strictObject({ draftNumber: z.int(), by: z.string(), operations: z.array(Operation) })),
        mine: z.array(Operation),
      })
      .optional(),
  })
  .meta({ id: "Problem" });
export type Problem = z.infer<typeof Problem>;
