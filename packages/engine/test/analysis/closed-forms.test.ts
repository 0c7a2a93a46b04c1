import { describe, expect, it } from "vitest";
import type { FreedomName } from "../../src/model/analytical-model.ts";
import { bendingSection, IN_PLANE, lineModel, ROTATIONS, solved, type Parts } from "./line-model.ts";

// Source: shared/reference/closed_forms.json (derived from first principles; formulae written out here again).
const E = 200_000;
const bar = (A: number) => ({ E, G: E / 2.6, A, Iy: 1, Iz: 1, J: 1 });
const hinged = { rel_i: ROTATIONS, rel_j: ROTATIONS };
const RIGID_AREA = 1e9;

/** A wall of n equal strips between two hinged chords and hinged rigid uprights, in the x-z plane. */
function deepWall(n: number): Parts {
  const [L, h] = [12_000, 2700];
  const stations = Array.from({ length: n + 1 }, (_, k) => k);
  const nodes = Object.fromEntries(
    stations.flatMap((k) => [
      [`b${k}`, [(L * k) / n, 0, 0]],
      [`t${k}`, [(L * k) / n, 0, h]],
    ]),
  );
  return {
    nodes: nodes as Parts["nodes"],
    sections: { chord: bar(660), upright: bar(RIGID_AREA) },
    beams: Object.fromEntries([
      ...stations.slice(1).flatMap((k) => [
        [`bottom${k}`, { i: `b${k - 1}`, j: `b${k}`, section: "chord", ...hinged }],
        [`top${k}`, { i: `t${k - 1}`, j: `t${k}`, section: "chord", ...hinged }],
      ]),
      ...stations.map((k) => [`upright${k}`, { i: `b${k}`, j: `t${k}`, section: "upright", ...hinged }]),
    ]),
    panels: Object.fromEntries(
      stations.slice(1).map((k) => [`p${k}`, { nodes: [`b${k - 1}`, `b${k}`, `t${k}`, `t${k - 1}`], Gt: 95_000 }]),
    ),
    supports: {
      ...Object.fromEntries(Object.keys(nodes).map((id) => [id, ["uy"] as FreedomName[]])),
      b0: ["ux", "uy", "uz"],
      [`b${n}`]: ["uy", "uz"],
    },
    load: { nodal: [{ node: `t${n / 2}`, F: [0, 0, -10_000, 0, 0, 0] }] },
  };
}

describe("deep wall of n strips, 10 kN at mid-length", () => {
  const [L, h, A, Gt, P] = [12_000, 2700, 660, 95_000, 10_000];

  it.each([
    [4, 0.81842],
    [10, 0.8577],
    [40, 0.86471],
  ])("%i strips: deflection %f mm, flow P/2h, chord force P(L/2 − L/2n)/2h", (n, printed) => {
    const s = solved(lineModel(deepWall(n)));
    const formula = ((P * L ** 3) / ((48 * E * A * h ** 2) / 2)) * (1 - 1 / n ** 2) + (P * L) / (4 * Gt * h);
    const deflection = -(s.displacements[`b${n / 2}`]?.[2] ?? NaN);
    expect(deflection / formula).toBeCloseTo(1, 5);
    expect(deflection).toBeCloseTo(printed, 4);
    expect(Math.abs(s.panelFlows["p1"] ?? NaN)).toBeCloseTo(P / (2 * h), 6);
    expect(Math.abs(s.memberEndForces[`bottom${n / 2}`]?.[0] ?? NaN)).toBeCloseTo(
      (P * (L / 2 - L / (2 * n))) / (2 * h),
      3,
    );
  });

  it("the error of the flexure falls with the square of the number of strips", () => {
    const exact = (P * L ** 3) / ((48 * E * A * h ** 2) / 2) + (P * L) / (4 * Gt * h);
    const error = (n: number) => exact + (solved(lineModel(deepWall(n))).displacements[`b${n / 2}`]?.[2] ?? NaN);
    expect(error(8) / error(16)).toBeCloseTo(4, 2);
  });
});

it("frame bay without sheet, 8 kN end shear: sway 11.25 mm, chord end moment 6.0 kN·m, chord force 4.444 kN", () => {
  const s = solved(
    lineModel({
      nodes: { a: [0, 0, 0], b: [0, 0, 2700], c: [3000, 0, 0], d: [3000, 0, 2700] },
      sections: { chord: bendingSection(E, 4e6), upright: bendingSection(E, 4e12, 1e9) },
      beams: {
        bottom: { i: "a", j: "c", section: "chord" },
        top: { i: "b", j: "d", section: "chord" },
        right: { i: "c", j: "d", section: "upright" },
      },
      supports: { a: [...IN_PLANE, "ux", "uz", "ry"], b: [...IN_PLANE, "ux", "uz", "ry"], c: IN_PLANE, d: IN_PLANE },
      load: {
        nodal: [
          { node: "c", F: [0, 0, -4000, 0, 0, 0] },
          { node: "d", F: [0, 0, -4000, 0, 0, 0] },
        ],
      },
    }),
  );
  expect(-(s.displacements["c"]?.[2] ?? NaN)).toBeCloseTo(11.25, 2);
  expect(Math.abs(s.memberEndForces["top"]?.[4] ?? NaN) / 1e6).toBeCloseTo(6, 3);
  expect(Math.abs(s.memberEndForces["top"]?.[0] ?? NaN) / 1e3).toBeCloseTo(4.444, 2);
});

it("panel in a hinged picture frame, 6 kN: flow 2 N/mm, sway 0.048 mm, couple 4.8 kN", () => {
  const rigid = { section: "rigid", ...hinged };
  const s = solved(
    lineModel({
      nodes: { a: [0, 0, 0], b: [3000, 0, 0], c: [3000, 0, 2400], d: [0, 0, 2400] },
      sections: { rigid: bar(RIGID_AREA) },
      beams: {
        left: { i: "a", j: "d", ...rigid },
        right: { i: "b", j: "c", ...rigid },
        top: { i: "d", j: "c", ...rigid },
        bottom: { i: "a", j: "b", ...rigid },
      },
      panels: { sheet: { nodes: ["a", "b", "c", "d"], Gt: 100_000 } },
      supports: { a: ["ux", "uy", "uz"], b: ["uy", "uz"], c: ["uy"], d: ["uy"] },
      load: { nodal: [{ node: "d", F: [6000, 0, 0, 0, 0, 0] }] },
    }),
  );
  expect(s.panelFlows["sheet"]).toBeCloseTo(2, 6);
  expect(s.displacements["d"]?.[0]).toBeCloseTo(0.048, 5);
  expect(s.reactions["b"]?.[2]).toBeCloseTo(4800, 3);
});

it("twist of a closed box of six panels held at three corners, 10 kN down at the fourth: 2.46594 mm, all flows 1.85185 N/mm, the opposite corner pulls 10 kN", () => {
  const [L, B, H, P] = [12_000, 2300, 2700, 10_000];
  const corners: Parts["nodes"] = {};
  for (const x of [0, L])
    for (const y of [0, B]) for (const z of [0, H]) corners[`${x ? 1 : 0}${y ? 1 : 0}${z ? 1 : 0}`] = [x, y, z];
  const ids = Object.keys(corners);
  const edges = ids.flatMap((a) =>
    ids.filter((b) => a < b && [...a].filter((digit, k) => digit !== b[k]).length === 1).map((b) => [a, b] as const),
  );
  const s = solved(
    lineModel({
      nodes: corners,
      sections: { rigid: bar(RIGID_AREA) },
      beams: Object.fromEntries(edges.map(([i, j]) => [`${i}-${j}`, { i, j, section: "rigid", ...hinged }])),
      panels: {
        near: { nodes: ["000", "100", "101", "001"], Gt: 110_000 },
        far: { nodes: ["010", "110", "111", "011"], Gt: 90_000 },
        front: { nodes: ["000", "010", "011", "001"], Gt: 140_000 },
        rear: { nodes: ["100", "110", "111", "101"], Gt: 120_000 },
        roof: { nodes: ["001", "101", "111", "011"], Gt: 30_000 },
        floor: { nodes: ["000", "100", "110", "010"], Gt: 5000 },
      },
      supports: { "000": ["ux", "uy", "uz"], "100": ["uy", "uz"], "010": ["uz"] },
      load: { nodal: [{ node: "110", F: [0, 0, -P, 0, 0, 0] }] },
    }),
  );
  const flexibility =
    (L * H) / 110_000 + (L * H) / 90_000 + (B * H) / 140_000 + (B * H) / 120_000 + (L * B) / 30_000 + (L * B) / 5000;
  expect(-(s.displacements["110"]?.[2] ?? NaN) / ((P / (4 * H * H)) * flexibility)).toBeCloseTo(1, 5);
  expect(-(s.displacements["110"]?.[2] ?? NaN)).toBeCloseTo(2.46594, 4);
  for (const flow of Object.values(s.panelFlows)) expect(Math.abs(flow)).toBeCloseTo(P / (2 * H), 5);
  expect(s.reactions["000"]?.[2]).toBeCloseTo(-P, 3);
});

it("crossing beams of 4 m and 3 m share 1 kN as 1/L³: 0.494505 mm, 148.352 N at each end of the longer", () => {
  const s = solved(
    lineModel({
      nodes: { w: [-2000, 0, 0], e: [2000, 0, 0], s: [0, -1500, 0], n: [0, 1500, 0], m: [0, 0, 0] },
      sections: { s: bendingSection(E, 4e6) },
      beams: Object.fromEntries(["w", "e", "s", "n"].map((id) => [id, { i: id, j: "m", section: "s" }])),
      supports: { w: ["ux", "uy", "uz", "rx"], e: ["uy", "uz"], s: ["uz"], n: ["uz"] },
      load: { nodal: [{ node: "m", F: [0, 0, -1000, 0, 0, 0] }] },
    }),
  );
  expect(-(s.displacements["m"]?.[2] ?? NaN)).toBeCloseTo(0.494505, 5);
  expect(s.reactions["w"]?.[2]).toBeCloseTo(148.352, 2);
});

it("beam on three compression-only supports with 100 N at 0 and at the free end: the middle opens, 50 N and 150 N remain", () => {
  const s = solved(
    lineModel({
      nodes: { a: [0, 0, 0], b: [1000, 0, 0], c: [2000, 0, 0], d: [3000, 0, 0] },
      sections: { s: bendingSection(E, 4e6) },
      beams: {
        ab: { i: "a", j: "b", section: "s" },
        bc: { i: "b", j: "c", section: "s" },
        cd: { i: "c", j: "d", section: "s" },
      },
      supports: {
        a: { fix: ["ux", "uy", "uz", "rx", "rz"], compression_only: true },
        b: { fix: ["uz"], compression_only: true },
        c: { fix: ["uz"], compression_only: true },
      },
      load: {
        nodal: [
          { node: "a", F: [0, 0, -100, 0, 0, 0] },
          { node: "d", F: [0, 0, -100, 0, 0, 0] },
        ],
      },
    }),
  );
  expect(s.open.supports).toEqual(["b"]);
  expect(["a", "b", "c"].map((id) => s.reactions[id]?.[2])).toEqual([expect.closeTo(50, 6), 0, expect.closeTo(150, 6)]);
});

/** Share of the shear stiffness Gt·L/H that a sheet keeps with two free upright edges between rigid rails, m layers by n strips. */
function keptByFreeEdges(L: number, layers: number, strips: number): number {
  const [H, Gt, Ev, Eh] = [2645, 115_638, 340_585, 333];
  const name = (column: number, row: number) => `${column}.${row}`;
  const columns = Array.from({ length: strips + 1 }, (_, k) => k);
  const rows = Array.from({ length: layers + 1 }, (_, k) => k);
  const nodes = Object.fromEntries(
    columns.flatMap((c) => rows.map((r) => [name(c, r), [(L * c) / strips, 0, (H * r) / layers]])),
  );
  const panels = columns
    .slice(1)
    .flatMap((c) =>
      rows
        .slice(1)
        .map((r) => [
          `${c}.${r}`,
          { nodes: [name(c - 1, r - 1), name(c, r - 1), name(c, r), name(c - 1, r)], Gt, Ev, Eh },
        ]),
    );
  const model = lineModel({
    nodes: nodes as Parts["nodes"],
    sections: {},
    panels: Object.fromEntries(panels),
    supports: Object.fromEntries(
      columns.flatMap((c) => [
        [name(c, 0), ["ux", "uy", "uz"]],
        [name(c, layers), ["ux", "uy", "uz"]],
      ]),
    ) as Parts["supports"],
    load: { settle: columns.map((c) => ({ node: name(c, layers), dof: "ux" as const, value: 1 })) },
  });
  const pull = columns.reduce((sum, c) => sum + (solved(model).reactions[name(c, layers)]?.[0] ?? NaN), 0);
  return pull / ((Gt * L) / H);
}

describe("free upright edges of a sheet between rigid rails", () => {
  // lam = H·√(Gt/(12·E·t·dev/pitch)) = 444.9; kept = 1 − tanh(k)/k, k = L/2lam: 0.605 for L 2224 and 0.800 for L 4448.
  it.each([
    [2224, 0.605],
    [4448, 0.8],
  ])("a sheet %i mm long keeps %f of its stiffness, within 3 percent with eight layers and 75 mm strips", (L, kept) => {
    expect(Math.abs(keptByFreeEdges(L, 8, Math.round(L / 75)) / kept - 1)).toBeLessThan(0.03);
  });

  it("one layer between rigid rails keeps all of it, which is why windows and unframed cuts need layers", () => {
    expect(keptByFreeEdges(2224, 1, 8)).toBeCloseTo(1, 9);
  });
});
