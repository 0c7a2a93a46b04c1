import fc from "fast-check";

/** As much of a JSON schema (2020-12) as the API description uses. */
export interface JsonSchema {
  $ref?: string;
  type?: string | string[];
  properties?: Record<string, JsonSchema>;
  required?: string[];
  items?: JsonSchema;
  prefixItems?: JsonSchema[];
  anyOf?: JsonSchema[];
  oneOf?: JsonSchema[];
  allOf?: JsonSchema[];
  enum?: unknown[];
  const?: unknown;
  format?: string;
  pattern?: string;
  minimum?: number;
  maximum?: number;
}

export type Components = Record<string, JsonSchema>;

const deepest = 6;

/** Values that a schema takes, or nearly: a spoiled one should fail for what was spoiled, not for all the rest. */
export function arbitraryOf(schema: JsonSchema, components: Components, depth = 0): fc.Arbitrary<unknown> {
  const inner = (one: JsonSchema) => arbitraryOf(one, components, depth + 1);
  if (depth > deepest) return fc.constant(null);
  if (schema.$ref !== undefined) return inner(components[schema.$ref.split("/").at(-1) ?? ""] ?? {});
  if (schema.const !== undefined) return fc.constant(schema.const);
  if (schema.enum !== undefined) return fc.constantFrom(...schema.enum);
  const choices = schema.anyOf ?? schema.oneOf;
  if (choices !== undefined) return fc.oneof(...choices.map(inner));
  if (schema.allOf !== undefined) return inner(Object.assign({}, ...schema.allOf) as JsonSchema);
  if (schema.properties !== undefined)
    return fc.record(Object.fromEntries(Object.entries(schema.properties).map(([name, one]) => [name, inner(one)])), {
      requiredKeys: schema.required ?? [],
    });
  const type = Array.isArray(schema.type) ? schema.type[0] : schema.type;
  if (type === "array") return fc.array(inner(schema.items ?? schema.prefixItems?.[0] ?? {}), { maxLength: 3 });
  if (type === "integer" || type === "number") return numberOf(schema);
  if (type === "boolean") return fc.boolean();
  if (type === "null") return fc.constant(null);
  return stringOf(schema);
}

const numberOf = ({ minimum = -1_000_000, maximum = 1_000_000 }: JsonSchema): fc.Arbitrary<unknown> =>
  fc.integer({ min: Math.max(-1e9, Math.ceil(minimum)), max: Math.min(1e9, Math.floor(maximum)) });

function stringOf({ format, pattern }: JsonSchema): fc.Arbitrary<unknown> {
  if (format === "uuid") return fc.uuid({ version: 4 });
  if (format === "email") return fc.constant("someone@people.example");
  if (format === "date-time") return fc.constant("2026-01-01T00:00:00.000Z");
  if (format === "uri") return fc.constant("https://hook.example/x");
  if (pattern?.includes("{64}") === true) return fc.constant("0".repeat(64));
  if (pattern?.includes("A-Z]{1,2}") === true) return fc.constantFrom("A", "B");
  return fc.string({ minLength: 1, maxLength: 12 });
}
