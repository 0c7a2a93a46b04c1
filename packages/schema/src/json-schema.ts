import { z } from "zod";
import "./index.ts";

/** Every named shape as one JSON Schema document, draft 2020-12: what may be sent, before text is normalised. */
export function jsonSchema(): { $schema: string; $defs: Record<string, unknown> } {
  const { schemas } = z.toJSONSchema(z.globalRegistry, { io: "input", uri: (id) => `#/$defs/${id}` });
  const names = Object.keys(schemas).sort();
  const $defs = Object.fromEntries(names.map((name) => [name, withoutAddress(schemas[name] ?? {})]));
  return { $schema: "https://json-schema.org/draft/2020-12/schema", $defs };
}

/** A part of one document has no address and no dialect of its own. */
function withoutAddress(schema: object): object {
  return Object.fromEntries(Object.entries(schema).filter(([key]) => key !== "$id" && key !== "$schema"));
}
