import type { Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { addedSteel } from "../../src/loads/added-steel.ts";
import { deadCase } from "../../src/loads/dead-cases.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";
import { lineForces, oneRun } from "../strength/one-run.ts";

// A 20 ft unit whose right side is cut out over 5.4 m of its 5.85 m and framed with tubes 100×100×6: 100² − 88² = 2256 mm², at
// 7850 kg/m³ and 9.80665 m/s² 173.7 N/m. Post axes stand 89.5 mm behind the outer face of the fittings (ISO 668: 2438 less 2259,
// halved, from memory).
const N_PER_M = (2256 / 1e6) * 7850 * 9.80665;
const cut = { face: "right", framed: true, fromMm: 300, widthMm: 5400, use: "open-wall" } as const;
const scheme: Scheme = { ...drawnUnit({ type: "1CC", openings: [cut] }), loads: [] };
const heightM = (scheme.openings[0]?.heightUm ?? NaN) / 1e6;

describe("the frame of a side that is cut out", () => {
  const bars = addedSteel(scheme);

  it("weighs what its four bars do", () => {
    const sum = bars.reduce((all, { weightN }) => all + weightN, 0);
    expect(sum / (N_PER_M * 2 * (heightM + 5.4))).toBeCloseTo(1, 3);
  });

  it("stands in the plane of the posts, jambs on the rail at its ends", () => {
    for (const { at } of bars) expect(at.yMm).toBeCloseTo(-1219 + 89.5, 6);
    const jambs = bars.filter(({ weightN }) => Math.abs(weightN - N_PER_M * heightM) < 1);
    expect(jambs.map(({ at }) => Math.round(at.xMm)).toSorted((a, b) => a - b)).toEqual([-2729, 2671]);
  });

  it("bends what carries a level bar by w L²/8, as an even load does", () => {
    const [left, right] = [-2729, 2671];
    const level = bars.filter(({ weightN }) => Math.abs(weightN - N_PER_M * heightM) >= 1);
    const high = level.filter(({ at }) => at.zMm > 1000);
    const reaction = high.reduce((sum, { weightN, at }) => sum + (weightN * (right - at.xMm)) / (right - left), 0);
    const before = high.filter(({ at }) => at.xMm < (left + right) / 2 - 1);
    const middle = before.reduce((sum, { weightN, at }) => sum - weightN * ((left + right) / 2 - at.xMm), 0);
    expect((reaction * (right - left)) / 2 + middle).toBeCloseTo((N_PER_M / 1000) * (5400 * 5400) * (1 / 8), -3);
  });

  // Taken at the outer face in the middle of the opening it would twist the bare bottom rail by 2.4 kN × 89.5 mm/2 = 0.11 kN·m,
  // for which nothing is there: it stands over the rail.
  it("does not twist the rail it stands on", () => {
    const { set, solved } = oneRun(scheme, [deadCase(scheme, "most")]);
    const { fragment } = set.built.model.units[0] ?? { fragment: { nodes: [], beams: [] } };
    const across = new Map(fragment.nodes.map(({ id, y }) => [id, y]));
    const right = new Set(fragment.beams.filter(({ i }) => (across.get(i) ?? 0) < -1000).map(({ id }) => id));
    const twists = lineForces(solved, set, "u1").flatMap(([id, forces]) =>
      id.startsWith("bottomRail") && right.has(id) ? [Math.abs(forces[3] ?? NaN)] : [],
    );
    expect(twists.length).toBeGreaterThan(10);
    expect(Math.max(...twists)).toBeLessThan(5000);
  });
});
