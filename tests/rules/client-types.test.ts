import { readFileSync } from "node:fs";
import path from "node:path";
import { expect, it } from "vitest";
import { clientTypes, clientTypesFile } from "../../apps/api/bin/client-types.ts";

it("the types of the web's client are those of the routes; `npm run api:types` writes them", async () => {
  const kept = readFileSync(path.resolve(import.meta.dirname, "../..", clientTypesFile), "utf8");
  expect(kept === (await clientTypes())).toBe(true);
});
