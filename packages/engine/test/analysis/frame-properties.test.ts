import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Matrix, solve } from "ml-matrix";
import type { AnalyticalModel, Six, Triple } from "../../src/model/analytical-model.ts";
import { frameSystem } from "../../src/analysis/frame-system.ts";
import { combinedLoads } from "../../src/analysis/combined-loads.ts";
import { solveFrame } from "../../src/frame.ts";
import { lineModel, solved } from "./line-model.ts";
import { randomFrame } from "./random-frame.ts";

const settings = { seed: 20260103, numRuns: 60 };

/** Translations in mm and rotations times 1000 mm, so that one tolerance serves both. */
const flat = (displacements: Readonly<Record<string, readonly number[]>>) =>
  Object.values(displacements).flatMap((u) => u.map((v, c) => (c < 3 ? v : v * 1000)));
const largest = (values: readonly number[]) => Math.max(...values.map(Math.abs), Number.MIN_VALUE);
const apart = (a: readonly number[], b: readonly number[]) =>
  Math.max(...a.map((v, n) => Math.abs(v - (b[n] ?? NaN)))) / largest(b);

describe("every stable frame", () => {
  it("moves as a plain dense solve of the same elements says (ml-matrix), to 1e-9 of the largest", () => {
    fc.assert(
      fc.property(randomFrame, (parts) => {
        const model = lineModel(parts);
        const frame = frameSystem(model);
        const loads = combinedLoads(frame, model, { load: 1 });
        const free = [...frame.system.held].flatMap((flag, f) => (flag ? [] : [f]));
        const dense = Matrix.zeros(frame.system.held.length, frame.system.held.length);
        for (const { freedoms, matrix } of frame.system.elements) {
          freedoms.forEach((i, a) =>
            freedoms.forEach((j, b) => dense.set(i, j, dense.get(i, j) + (matrix[a * freedoms.length + b] ?? 0))),
          );
        }
        const expected = solve(
          dense.selection(free, free),
          Matrix.columnVector(free.map((f) => loads.forces[f] ?? 0)),
        ).to1DArray();
        const ours = Object.values(solved(model).displacements).flat();
        const weigh = (value: number, k: number) => ((free[k] ?? 0) % 6 < 3 ? value : value * 1000);
        expect(
          apart(
            free.map((f, k) => weigh(ours[f] ?? NaN, k)),
            expected.map(weigh),
          ),
        ).toBeLessThan(1e-9);
      }),
      settings,
    );
  });

  it("is in equilibrium with its loads and leaves a residual of rounding", () => {
    fc.assert(
      fc.property(randomFrame, (parts) => {
        const s = solved(lineModel(parts));
        const load = largest(Object.values(s.reactions).flatMap((r) => r.slice(0, 3)));
        expect(largest(s.equilibrium.slice(0, 3))).toBeLessThan(1e-9 * load);
        expect(largest(s.equilibrium.slice(3))).toBeLessThan(1e-9 * load * 10_000);
        expect(s.residual).toBeLessThan(1e-9);
      }),
      settings,
    );
  });

  it("keeps Maxwell and Betti: P₁·u₂ = P₂·u₁ for two load sets", () => {
    fc.assert(
      fc.property(randomFrame, fc.integer({ min: 1, max: 1000 }), (parts, seed) => {
        const nodal = parts.load.nodal ?? [];
        const other = nodal.map(({ node, F }, n) => ({
          node,
          F: F.map((value, c) => (((n + seed) * (c + 3)) % 7) * (c < 3 ? 100 : 1e5) - value / 2) as unknown as Six,
        }));
        const one = solved(lineModel({ ...parts, load: { nodal } }));
        const two = solved(lineModel({ ...parts, load: { nodal: other } }));
        const work = (loads: typeof nodal, moved: typeof one) =>
          loads.reduce(
            (sum, { node, F }) => sum + F.reduce((s, f, c) => s + f * (moved.displacements[node]?.[c] ?? 0), 0),
            0,
          );
        const [a, b] = [work(nodal, two), work(other, one)];
        const scale = Math.sqrt(Math.abs(work(nodal, one) * work(other, two))) || 1;
        expect(Math.abs(a - b)).toBeLessThan(1e-9 * scale);
      }),
      settings,
    );
  });

  it("superposes: the sum of two combinations is their sum combined", () => {
    fc.assert(
      fc.property(randomFrame, fc.integer({ min: -3, max: 3 }), (parts, factor) => {
        const base = lineModel(parts);
        const model: AnalyticalModel = {
          ...base,
          cases: { nodal: { nodal: parts.load.nodal ?? [] }, spread: { beam_udl: parts.load.beam_udl ?? [] } },
          combos: { a: { nodal: 1 }, b: { spread: factor }, both: { nodal: 1, spread: factor } },
        };
        const [a, b, both] = ["a", "b", "both"].map((name) => flat(solved(model, name).displacements));
        expect(
          apart(
            (a ?? []).map((v, n) => v + (b?.[n] ?? NaN)),
            both ?? [],
          ),
        ).toBeLessThan(1e-9);
      }),
      settings,
    );
  });

  it("does not know where it stands: turned and moved as a whole, its member forces and flows are the same", () => {
    fc.assert(
      fc.property(
        randomFrame,
        fc.tuple(
          fc.double({ min: -3, max: 3, noNaN: true }),
          fc.double({ min: -3, max: 3, noNaN: true }),
          fc.double({ min: -3, max: 3, noNaN: true }),
        ),
        (parts, angles) => {
          const turn = turning(angles);
          const six = ([a, b, c, d, e, f]: Six): Six => [...turn([a, b, c]), ...turn([d, e, f])];
          const model = lineModel(parts);
          const moved: AnalyticalModel = {
            ...model,
            nodes: model.nodes.map(({ id, x, y, z }) => {
              const [u, v, w] = turn([x, y, z]);
              return { id, x: u + 5000, y: v - 700, z: w + 90 };
            }),
            beams: model.beams.map((beam) => ({ ...beam, up: turn(beam.up ?? [0, 0, 1]) })),
            cases: {
              load: {
                nodal: (parts.load.nodal ?? []).map(({ node, F }) => ({ node, F: six(F) })),
                beam_udl: (parts.load.beam_udl ?? []).map(({ beam, q }) => ({ beam, q: turn(q) })),
              },
            },
          };
          const [here, there] = [solved(model), solved(moved)];
          const forces = (s: typeof here, turning: boolean) =>
            Object.values(s.memberEndForces).flatMap((f) => f.filter((_, c) => c % 6 >= 3 === turning));
          expect(apart(forces(there, false), forces(here, false))).toBeLessThan(1e-8);
          expect(apart(forces(there, true), forces(here, true))).toBeLessThan(1e-8);
          const flows = [Object.values(there.panelFlows), Object.values(here.panelFlows)] as const;
          if (flows[0].length > 0) expect(apart(...flows)).toBeLessThan(1e-8);
        },
      ),
      settings,
    );
  });

  it("gives the same bits when solved twice", () => {
    const [parts] = fc.sample(randomFrame, { seed: 11, numRuns: 1 });
    if (parts === undefined) throw new Error("no frame drawn");
    expect(JSON.stringify(solveFrame(lineModel(parts)))).toBe(JSON.stringify(solveFrame(lineModel(parts))));
  });
});

/** A rotation by three Euler angles (host trigonometry: only the test's geometry depends on it). */
function turning([a, b, c]: readonly [number, number, number]): (v: Triple) => Triple {
  const about = (v: Triple, i: number, j: number, angle: number): Triple => {
    const w: [number, number, number] = [...v];
    w[i] = Math.cos(angle) * (v[i] ?? 0) - Math.sin(angle) * (v[j] ?? 0);
    w[j] = Math.sin(angle) * (v[i] ?? 0) + Math.cos(angle) * (v[j] ?? 0);
    return w;
  };
  return (v) => about(about(about(v, 0, 1, a), 1, 2, b), 0, 1, c);
}
