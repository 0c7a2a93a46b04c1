import { describe, expect, it } from "vitest";
import { condensationCache } from "../../src/building.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import { buildModel } from "../../src/model/build-model.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";

// Taking more of a sheet away can only make a body softer: for every movement x of its bearing points, xᵀKx is never more with
// the larger cut (the principle of least potential energy). Bare cuts, since a frame adds steel of its own. The mesh of the sheet
// follows the cut, which moves xᵀKx by its own error; it is allowed half a percent.

const MESH_ERROR = 0.005;

/** Stiffness of a 20 ft unit on its eight corners, its right side cut from rail to rail, full and row by row. */
function stiffnessWith(cut: { readonly fromMm: number; readonly widthMm: number } | undefined): Float64Array {
  const openings = cut === undefined ? [] : [{ face: "right", framed: false, ...cut } as const];
  const { model } = buildModel(analyse(drawnUnit({ type: "1CC", openings })), [], {});
  const [unit] = model.units;
  if (unit === undefined) throw new Error("there is a unit");
  const condensation = condensationCache(1e8).part(unit.fragment);
  if (!condensation.stable) throw new Error("it is stable");
  return condensation.condensed.stiffness;
}

/** xᵀKx. */
function energy(stiffness: Float64Array, movement: readonly number[]): number {
  const n = movement.length;
  let sum = 0;
  for (let r = 0; r < n; r++)
    for (let c = 0; c < n; c++) sum += (movement[r] ?? 0) * (stiffness[r * n + c] ?? 0) * (movement[c] ?? 0);
  return sum;
}

/** Movements of the bearing points by a linear congruential sequence: the same in every run. */
function movements(count: number, freedoms: number): number[][] {
  let seed = 12_345;
  const next = (): number => {
    seed = (Math.imul(seed, 1_103_515_245) + 12_345) & 0x7fffffff;
    return seed / 0x40000000 - 1;
  };
  // turns in thousandths, as a body a few metres long moves
  return Array.from({ length: count }, () =>
    Array.from({ length: freedoms }, (_, f) => (f % 6 < 3 ? next() : next() / 1000)),
  );
}

describe("a cut that contains another", () => {
  const cuts = [
    undefined,
    { fromMm: 2800, widthMm: 600 },
    { fromMm: 2500, widthMm: 1200 },
    { fromMm: 1900, widthMm: 2400 },
  ];
  const all = cuts.map(stiffnessWith);

  it("is never stiffer, whichever way the corners move", () => {
    const freedoms = Math.round(Math.sqrt(all[0]?.length ?? 0));
    for (const movement of movements(200, freedoms)) {
      const energies = all.map((stiffness) => energy(stiffness, movement));
      energies.slice(1).forEach((larger, n) => {
        expect(larger).toBeLessThanOrEqual((energies[n] ?? NaN) * (1 + MESH_ERROR));
      });
    }
  });
});
