import { expect, it } from "vitest";
import { determinismBreaches } from "./determinism.ts";
import { engineSources } from "./engine-sources.ts";

// Each line is one planted breach. Which functions of Math are approximated: ECMA-262, "Function Properties of the Math Object".
const PLANTED: [source: string, what: string][] = [
  ...["sin", "cos", "tan", "asin", "acos", "atan", "atan2", "sinh", "cosh", "tanh", "asinh", "acosh", "atanh"].map(
    mathCall,
  ),
  ...["exp", "expm1", "log", "log2", "log10", "log1p", "pow", "cbrt", "hypot", "random", "f16round"].map(mathCall),
  ["const y = x ** 2;", "**"],
  ["x **= 2;", "**="],
  ["const { sin } = Math;", "Math handed on whole"],
  ["const m = Math; m.sin(1);", "Math handed on whole"],
  ['Math["sin"](1);', "Math handed on whole"],
  ["const now = Date.now();", "Date"],
  ["new Date();", "Date"],
  ["performance.now();", "performance"],
  ["globalThis.Math.sin(1);", "globalThis"],
  ["crypto.randomUUID();", "crypto"],
  ["console.log(1);", "console"],
  ["setTimeout(draw, 1);", "setTimeout"],
  ["const later = new Promise(run);", "Promise"],
  ["fetch(address);", "fetch"],
  ["const page = window.innerWidth;", "window"],
  ["export function f(Date) { return Date; } Date.now();", "Date"],
  ["new Intl.NumberFormat();", "Intl"],
  ["(1).toLocaleString();", "toLocaleString"],
  ["names.sort((a, b) => a.localeCompare(b));", "localeCompare"],
  ['name["toLocaleUpperCase"]();', "toLocaleUpperCase"],
  ["const held = new WeakRef(row);", "WeakRef"],
  ['import { readFileSync } from "node:fs";', "import from node:fs"],
  ['import fs from "fs";', "import from fs"],
  ['import { z } from "zod";', "import from zod"],
  ['import { Scheme } from "@cornerway/schema";', "import from @cornerway/schema"],
  ['export { Scheme } from "@cornerway/schema";', "import from @cornerway/schema"],
  ['const fs = await import("./fs.ts");', "import()"],
];

it.each(PLANTED)("determinismBreaches finds the breach in: %s", (source, what) => {
  expect(determinismBreaches(`const before = 1;\n${source}`, "planted.ts")).toContainEqual({ line: 2, what });
});

it("determinismBreaches lets exact functions, own modules and types of the schema pass", () => {
  const source = `
    import type { Scheme } from "@cornerway/schema";
    import { sin } from "./numerics/elementary.ts";
    export type { Scheme } from "@cornerway/schema";
    export { Date as day2, STEP_MM as stepMm } from "./numerics/elementary.ts";
    const known = new WeakMap<object, number>();
    export const lengthMm = Math.sqrt(4) + Math.abs(-1) + Math.min(1, 2) + Math.max(1, 2) + Math.floor(1.5) + Math.ceil(1.5);
    export const rest = Math.round(1.5) + Math.trunc(1.5) + Math.sign(-1) + Math.fround(1.5) + Math.imul(2, 3) + Math.PI * sin(1);
    export const row = { Date: 1, process: 2 };
    export function turned({ global, self }: { global: number; self: number }, window: Float64Array): number {
      for (const name of Object.keys(row)) if (Number.isNaN(Number(name))) throw new RangeError(name);
      return global + self + (window[0] ?? 0);
    }
    const { Date: day } = row;
    export const read = row.Date + row.process + day + (known.get(row) ?? 0);
    // Math.sin and x ** 2 in a comment, "Math.cos" in a text
    export const text = "Math.cos ** Date";
  `;
  expect(determinismBreaches(source, "clean.ts")).toEqual([]);
});

it("the engine's own sources hold no breach", () => {
  const sources = engineSources();
  expect(sources.length).toBeGreaterThan(0);
  expect(
    sources.flatMap(({ file, source }) => determinismBreaches(source, file).map((breach) => ({ file, ...breach }))),
  ).toEqual([]);
});

function mathCall(name: string): [string, string] {
  return [`const y = Math.${name}(x);`, `Math.${name}`];
}
