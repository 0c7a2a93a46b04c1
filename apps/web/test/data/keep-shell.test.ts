import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { expect, it } from "vitest";

const source = path.resolve(import.meta.dirname, "../../src");
const importedIn = (file: string): string[] =>
  [...readFileSync(file, "utf8").matchAll(/import\("(\.[^"]+)"\)/g)].map(([, to = ""]) =>
    path.relative(source, path.resolve(path.dirname(file), to)),
  );
const filesIn = (folder: string): string[] =>
  readdirSync(path.join(source, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => path.join(source, folder, name));

it("every part one draws with that is fetched on demand is fetched ahead, so that drawing goes on without a line", () => {
  const kept = importedIn(path.join(source, "data/keep-shell.ts"));
  const onDemand = [...filesIn("twin"), ...filesIn("screens/scheme")].flatMap(importedIn);
  expect(onDemand.length).toBeGreaterThan(10);
  expect(onDemand.filter((part) => !kept.includes(part))).toEqual([]);
});
