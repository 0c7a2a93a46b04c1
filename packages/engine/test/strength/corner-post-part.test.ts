import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cornerPostPart } from "../../src/strength/corner-post-part.ts";
import type { SolvedRun } from "../../src/strength/solve-runs.ts";
import { basis, firstSet } from "./one-run.ts";

const FORCES = 9;
const beams = ["a", "b", "c"].map((id, n) => ({ id, lengthMm: 300 + 400 * n }));
const at = (id: string): number => beams.findIndex((beam) => beam.id === id) * FORCES;

const force = fc.oneof(fc.constant(0), fc.integer({ min: -200_000, max: 200_000 }));
const moment = fc.oneof(fc.constant(0), fc.integer({ min: -6_000_000, max: 6_000_000 }));
const line = fc.tuple(force, force, force, moment, moment, moment, force, force, force);
const lines = fc.tuple(line, line, line).map((all) => Float64Array.from(all.flat()));

/** The part asks a solved run for nothing but the forces of its own lines. */
const underForces = (values: Float64Array): SolvedRun =>
  ({ set: firstSet(), held: [], inner: () => ({ values, at }) }) as unknown as SolvedRun;

describe("a corner post on plain numbers", () => {
  it.each([
    ["front corner post", false],
    ["front corner post", true],
    ["door corner post", false],
  ] as const)(
    "uses as much of a %s (with sheet: %s) as its worst place, whatever was found before",
    (element, sheeted) => {
      const post = { ownerId: "u", element, place: "left", clearMm: 2500, sheeted, beams };
      const part = cornerPostPart(post, basis.factored);
      fc.assert(
        fc.property(lines, (values) => {
          const run = underForces(values);
          const use = part.use(run);
          // the working of a run goes through every place, passing over none
          expect(part.decide(run).utilisation).toBe(use);
          expect(part.use(run, use * (1 - 1e-12))).toBe(use);
          expect(part.use(run, 2 * use)).toBeLessThanOrEqual(2 * use);
        }),
        { seed: 20261130, numRuns: 300 },
      );
    },
  );
});
