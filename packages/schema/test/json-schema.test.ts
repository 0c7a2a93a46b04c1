import { readFileSync } from "node:fs";
import path from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DraftAct, emptyScheme, Scheme } from "../src/index.ts";
import { jsonSchema } from "../src/json-schema.ts";
import { operation, scheme } from "./support/arbitrary-scheme.ts";

const read = (file: string): unknown => JSON.parse(readFileSync(path.resolve(import.meta.dirname, file), "utf8"));

// Ajv is a validator that knows nothing of zod: what it says of the generated document is a check from outside.
const ajv = new Ajv2020({ strict: false, validateFormats: false });
ajv.addSchema(jsonSchema(), "cornerway");
const conforms = (name: string, value: unknown) => ajv.validate(`cornerway#/$defs/${name}`, value);

describe("cornerway.schema.json", () => {
  it("is what the sources give; `npm run schema:json -w @cornerway/schema` writes it", () => {
    expect(read("../cornerway.schema.json")).toEqual(jsonSchema());
  });

  it("takes the demo scheme, by another validator", () => {
    expect(conforms("Scheme", read("../../../shared/demo/scheme.json"))).toBe(true);
  });

  it("agrees with the schemas on any scheme and any operation", () => {
    fc.assert(
      fc.property(scheme, operation, (one, change) => {
        expect(conforms("Scheme", one)).toBe(Scheme.safeParse(one).success);
        expect(conforms("Operation", change)).toBe(true);
      }),
      { seed: 2020, numRuns: 100 },
    );
  });

  it.each([
    ["an unknown field", "Scheme", { ...emptyScheme, notes: [] }],
    ["another version", "Scheme", { ...emptyScheme, version: 1 }],
    ["a fraction of a micrometre", "Site", { ...emptyScheme.site, groundZUm: 0.5 }],
    ["an act without operations", "DraftAct", { id: "8a7c3f7e-7f0b-4c5d-9a3e-0c6f3c2b1a00", base: 0, operations: [] }],
    ["an unknown operation", "Operation", { kind: "container.paint", id: "c1" }],
  ])("refuses %s, as the schemas do", (_what, name, value) => {
    expect(conforms(name, value)).toBe(false);
    if (name === "DraftAct") expect(DraftAct.safeParse(value).success).toBe(false);
  });
});
