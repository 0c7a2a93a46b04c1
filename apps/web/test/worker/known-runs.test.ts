import { knownRun } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { KnownRuns } from "../../src/worker/known-runs.ts";
import { schemeOf, unitAt } from "../support/schemes.ts";

const at = (xMm: number): Scheme => schemeOf([unitAt("g1", "G1", xMm, 0, 0)]);
const run = (xMm: number) => knownRun(at(xMm), { accepted: false, refusals: [] });

describe("the runs a page has made", () => {
  it("are found by what is drawn", () => {
    const runs = new KnownRuns();
    expect(runs.of(at(0))).toBeUndefined();
    runs.keep(run(0));
    expect(runs.of({ ...at(0) })).toEqual(run(0));
    expect(runs.of(at(10))).toBeUndefined();
  });

  it("are the last four", () => {
    const runs = new KnownRuns();
    for (const xMm of [0, 10, 20, 0, 30, 40]) runs.keep(run(xMm));
    expect([0, 10, 20, 30, 40].map((xMm) => runs.of(at(xMm)) !== undefined)).toEqual([true, false, true, true, true]);
  });
});
