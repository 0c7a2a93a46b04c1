import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";

const ROOT = path.resolve(import.meta.dirname, "../..");

/** Each file holds one import that a rule of .dependency-cruiser.cjs forbids, or one that it allows. */
const PLANTED: Record<string, string> = {
  "packages/schema/src/index.ts": "export type Scheme = string; export const scheme = 1;",
  "packages/schema/src/reads-disk.ts": 'import "node:fs";',
  "packages/engine/src/units.ts": "export const MM = 1000;",
  "packages/engine/src/reads-disk.ts": 'import "node:fs";',
  "packages/engine/src/uses-values.ts":
    'import { scheme } from "../../schema/src/index.ts"; export const used = scheme;',
  "packages/engine/src/uses-types.ts":
    'import type { Scheme } from "../../schema/src/index.ts"; export type Used = Scheme;',
  "packages/engine/src/geometry/place.ts": 'import { mark } from "../marks/mark.ts"; export const place = mark;',
  "packages/engine/src/marks/mark.ts": 'import { MM } from "../units.ts"; export const mark = MM;',
  "packages/engine/src/helpers/spare.ts": 'import { MM } from "../units.ts"; export const spare = MM;',
  "packages/engine/src/fabric/one.ts": 'import { two } from "./two.ts"; export const one = two;',
  "packages/engine/src/fabric/two.ts": 'import { one } from "./one.ts"; export const two = one;',
  "packages/engine/src/codes/loads/edition.ts": "export const edition = 1;",
  "packages/engine/src/checks/looks-up-edition.ts":
    'import { edition } from "../codes/loads/edition.ts"; export const check = edition;',
  "apps/api/src/server.ts": "export const server = 1;",
  "apps/api/src/opens-screens.ts": 'import { main } from "../../web/src/main.ts"; export const page = main;',
  "apps/api/src/generated/client.ts": "export const client = 1;",
  "apps/api/src/routes/opens-database.ts":
    'import { client } from "../generated/client.ts"; export const route = client;',
  "apps/api/src/store/rows.ts": 'import { client } from "../generated/client.ts"; export const rows = client;',
  "apps/web/src/main.ts": "export const main = 1;",
  "apps/web/src/opens-service.ts": 'import { server } from "../../api/src/server.ts"; export const called = server;',
  "apps/web/src/screens/record/page.ts": 'import { scheme } from "../scheme/page.ts"; export const record = scheme;',
  "apps/web/src/screens/scheme/page.ts": "export const scheme = 1;",
};

const EXPECTED = [
  "api-without-web apps/api/src/opens-screens.ts",
  "editions-apart packages/engine/src/checks/looks-up-edition.ts",
  "engine-alone packages/engine/src/reads-disk.ts",
  "engine-folder-in-order packages/engine/src/helpers/spare.ts",
  "engine-order-geometry packages/engine/src/geometry/place.ts",
  "engine-schema-types-only packages/engine/src/uses-values.ts",
  "no-cycles packages/engine/src/fabric/one.ts",
  "prisma-in-store-only apps/api/src/routes/opens-database.ts",
  "schema-zod-only packages/schema/src/reads-disk.ts",
  "screens-apart apps/web/src/screens/record/page.ts",
  "web-without-api apps/web/src/opens-service.ts",
];

let tree: string;

beforeAll(() => {
  tree = realpathSync(mkdtempSync(path.join(os.tmpdir(), "cornerway-layers-")));
  for (const [file, source] of Object.entries(PLANTED)) {
    mkdirSync(path.dirname(path.join(tree, file)), { recursive: true });
    writeFileSync(path.join(tree, file), source);
  }
});

afterAll(() => rmSync(tree, { recursive: true }));

it("the layer rules find each planted import and nothing else", () => {
  expect(violations()).toEqual(EXPECTED);
});

interface CruiseReport {
  summary: { violations: { from: string; rule: { name: string } }[] };
}

function violations(): string[] {
  const words = [path.join(ROOT, "node_modules/dependency-cruiser/bin/dependency-cruise.mjs"), "packages", "apps"];
  const options = ["--config", path.join(ROOT, ".dependency-cruiser.cjs"), "--output-type", "json"];
  const report: CruiseReport = JSON.parse(
    execFileSync(process.execPath, [...words, ...options], { cwd: tree, encoding: "utf8" }),
  );
  return report.summary.violations.map(({ from, rule }) => `${rule.name} ${from}`).sort();
}
