import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { combinedLoads } from "../../src/analysis/combined-loads.ts";
import { frameSystem } from "../../src/analysis/frame-system.ts";
import { prepare } from "../../src/analysis/prepare.ts";
import { allClosed } from "../../src/analysis/system.ts";
import type { BuildingModel } from "../../src/model/building-model.ts";
import { mergeBuilding } from "../../src/model/merge-building.ts";

/** Time of a general sparse direct solver on the same building, uncondensed, for the first combination; null where SciPy is not there. */
export function generalSolver(building: BuildingModel): { wallMs: number; cpuMs: number; unknowns: number } | null {
  const model = mergeBuilding(building);
  const frame = frameSystem(model);
  const prepared = prepare(frame.system, allClosed(frame.system));
  if (!prepared.stable) throw new Error("the bench building is a mechanism");
  const { elements, equationOf, factor } = prepared.prepared;
  const { forces } = combinedLoads(frame, model, Object.values(model.combos)[0] ?? {});
  const [rows, columns, values]: [number[], number[], number[]] = [[], [], []];
  for (const { freedoms, matrix } of elements) {
    freedoms.forEach((i, a) =>
      freedoms.forEach((j, b) => {
        const [row, column, value] = [equationOf[i] ?? -1, equationOf[j] ?? -1, matrix[a * freedoms.length + b] ?? 0];
        if (row < 0 || column < 0 || value === 0) return;
        rows.push(row);
        columns.push(column);
        values.push(value);
      }),
    );
  }
  const load = new Float64Array(factor.tree.equations);
  equationOf.forEach((equation, f) => equation >= 0 && (load[equation] = forces[f] ?? 0));
  return run({
    rows: Int32Array.from(rows),
    columns: Int32Array.from(columns),
    values: Float64Array.from(values),
    load,
  });
}

function run(files: Record<string, Int32Array | Float64Array>) {
  const folder = mkdtempSync(path.join(tmpdir(), "matrix-"));
  try {
    for (const [name, data] of Object.entries(files))
      writeFileSync(path.join(folder, name), new Uint8Array(data.buffer, data.byteOffset, data.byteLength));
    const script = path.join(path.dirname(fileURLToPath(import.meta.url)), "general_solver.py");
    const [wallMs = NaN, cpuMs = NaN, unknowns = NaN] = execFileSync("python3", [script, folder], { encoding: "utf8" })
      .split(" ")
      .map(Number);
    return { wallMs, cpuMs, unknowns };
  } catch {
    return null; // no Python, or no SciPy: the bench says that nothing was compared
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
