import { writeFileSync } from "node:fs";
import path from "node:path";
import { jsonSchema } from "../src/json-schema.ts";

// `npm run schema:json -w @cornerway/schema`: the file is kept in the repository, a test holds it against the sources.
writeFileSync(
  path.resolve(import.meta.dirname, "../cornerway.schema.json"),
  `${JSON.stringify(jsonSchema(), undefined, 2)}\n`,
);
