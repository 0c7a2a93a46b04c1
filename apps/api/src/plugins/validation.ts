import { pointerTo, type Problem } from "@cornerway/schema";
import fp from "fastify-plugin";
import { z } from "zod";

/** Part of a request that its schema refuses, with every place that is wrong. */
export class NotValid extends Error {
  readonly fields: NonNullable<Problem["fields"]>;
  constructor(fields: NonNullable<Problem["fields"]>) {
    super("not valid");
    this.fields = fields;
  }
}

const mostFields = 50;

/**
 * Bodies, parameters and queries are parsed by the zod schema of their route; handlers get what it gives. Answers are
 * written as they are: the tests hold each to the schema that the API description gives it.
 */
export default fp(
  async (app) => {
    app.setSerializerCompiler(() => (data) => JSON.stringify(data));
    app.setValidatorCompiler<unknown>(({ schema, httpPart = "body" }) => {
      if (!(schema instanceof z.ZodType)) throw new TypeError("the schema of a route is a zod schema");
      return (data) => {
        const read = schema.safeParse(data);
        return read.success ? { value: read.data } : { error: new NotValid(fieldsOf(read.error.issues, httpPart)) };
      };
    });
  },
  { name: "validation" },
);

/** `/field/…` in the body; `/params/…` or `/querystring/…` in the address. */
function fieldsOf(issues: readonly z.core.$ZodIssue[], httpPart: string): NotValid["fields"] {
  const root = httpPart === "body" ? [] : [httpPart];
  return issues.slice(0, mostFields).flatMap((issue) => {
    const path = [...root, ...issue.path];
    if (issue.code !== "unrecognized_keys") return [{ pointer: pointerTo(path), detail: issue.message }];
    return issue.keys.map((key) => ({ pointer: pointerTo([...path, key]), detail: "there is no such field" }));
  });
}
