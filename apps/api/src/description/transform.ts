import type { FastifyDynamicSwaggerOptions } from "@fastify/swagger";
import { jsonSchemaTransform, jsonSchemaTransformObject } from "fastify-type-provider-zod";
import { statusWords, type Description } from "./described.ts";
import { problemAnswers, problemsOf } from "./problem-answers.ts";
import { reachedComponents } from "./reached-components.ts";
import { securityOf } from "./security-of.ts";

type Transform = NonNullable<FastifyDynamicSwaggerOptions["transform"]>;
type TransformObject = NonNullable<FastifyDynamicSwaggerOptions["transformObject"]>;

/** A route as the document tells it: its zod schemas as JSON Schema, its answers with their headers, its problems. */
export const transform: Transform = (document) => {
  // The plug-in for sockets hides its routes; one that says what it is is shown.
  const { hide: _hidden, told, ...shown } = document.schema ?? {};
  const { schema, url } = jsonSchemaTransform(told === undefined ? document : { ...document, schema: shown });
  if (told === undefined) return { schema, url };
  const problems = problemAnswers(problemsOf(document.route, told.problems ?? []));
  return {
    schema: {
      ...schema,
      security: securityOf(document.route),
      response: { ...answersOf(told, schema.response), ...problems },
    },
    url,
  };
};

/** The whole document with the components that its routes lead to, and no others. */
export const transformObject: TransformObject = (document) => {
  const made = jsonSchemaTransformObject(document);
  if (!("components" in made) || made.components?.schemas === undefined) return made;
  const { schemas } = made.components;
  const reached = reachedComponents(schemas, made.paths);
  for (const name of Object.keys(schemas)) if (!reached.has(name)) delete schemas[name];
  return made;
};

function answersOf({ answers, headers = {} }: Description, response: unknown): Record<string, object> {
  const known: Record<string, unknown> = typeof response === "object" ? { ...response } : {};
  const named = Object.fromEntries(
    Object.entries(headers).map(([name, description]) => [name, { type: "string", description }]),
  );
  return Object.fromEntries(
    Object.keys(answers).map((status) => {
      const body = known[status] ?? { type: "null", description: statusWords(Number(status)) };
      return [status, { ...(typeof body === "object" ? body : {}), headers: named }];
    }),
  );
}
