import { readFileSync } from "node:fs";
import { readAnalyticalModel } from "../../src/model/read-analytical-model.ts";
import type { AnalyticalModel } from "../../src/model/analytical-model.ts";

const folder = new URL("../../../../shared/reference/", import.meta.url);

/** A reference file as the test that reads it says it is shaped. */
export function referenceJson<Shape>(name: string): Shape {
  const parsed: Shape = JSON.parse(readFileSync(new URL(name, folder), "utf8"));
  return parsed;
}

/** A reference model, read through the product's own reader. */
export function referenceModel(name: string): AnalyticalModel {
  return modelFrom(referenceJson(`models/${name}.model.json`));
}

export function modelFrom(json: unknown): AnalyticalModel {
  const reading = readAnalyticalModel(json);
  if (!reading.ok) throw new Error(`${reading.path}: ${reading.message}`);
  return reading.model;
}
