import { describe, expect, it } from "vitest";
import type { AnalyticalModel, FreedomName } from "../../src/model/analytical-model.ts";
import type { FrameRefusal } from "../../src/analysis/frame-result.ts";
import { solveFrame } from "../../src/frame.ts";
import { referenceModel } from "./reference-model.ts";
import { ALL, bendingSection, lineModel, ROTATIONS, solved, straightBeam } from "./line-model.ts";

function refusedBy(model: AnalyticalModel): FrameRefusal {
  const [result] = Object.values(solveFrame(model).combos);
  if (result === undefined || !("refused" in result)) throw new Error("not refused");
  return result;
}

const section = bendingSection(200_000, 4e6, 2000);
const tip = (n: number) => ({ nodal: [{ node: `n${n}`, F: [0, 0, -1000, 0, 0, 0] as const }] });

describe("a structure that can move is refused, naming what moves and which way", () => {
  it("a beam with nothing to hold it along its length moves east or west with all its nodes", () => {
    const { refused, moves } = refusedBy(lineModel(straightBeam(6000, 4, section, { n0: ["uz"], n4: ["uz"] }, tip(2))));
    expect(refused).toContain("n0, n1, n2 and 2 more");
    expect(moves.nodes).toEqual(["n0", "n1", "n2", "n3", "n4"]);
    expect(moves.direction.map(Math.abs)).toEqual([1, 0, 0, 0, 0, 0]);
  });

  it("a chain with a hinge in mid-span gives way downwards there, and only the nodes between the supports move", () => {
    const parts = straightBeam(6000, 4, section, { n0: ["ux", "uz"], n4: ["uz"] }, tip(2));
    const hinged = {
      ...parts,
      beams: { ...parts.beams, b1: { i: "n1", j: "n2", section: "s", rel_j: ["ry" as FreedomName] } },
    };
    const { moves } = refusedBy(lineModel(hinged));
    expect(moves.nodes).toEqual(["n1", "n2", "n3"]);
    expect(moves.direction[2]).toBeLessThan(0);
  });

  it("the verdict does not depend on the size of the stiffness: E times 1e-9 and times 1e9", () => {
    for (const factor of [1e-9, 1, 1e9]) {
      const scaled = { ...section, E: section.E * factor, G: section.G * factor };
      expect(
        refusedBy(lineModel(straightBeam(6000, 40, scaled, { n0: ["uz"], n40: ["uz"] }, tip(20)))).moves.nodes,
      ).toHaveLength(41);
      expect(
        solved(lineModel(straightBeam(6000, 40, scaled, { n0: ["ux", "uz"], n40: ["uz"] }, tip(20)))).residual,
      ).toBeLessThan(1e-6);
    }
  });

  it("a container on no supports at all is refused, and so is one free to slide north", () => {
    const model = referenceModel("D01");
    expect(refusedBy({ ...model, supports: [] }).moves.nodes.length).toBeGreaterThan(100);
    const supports = model.supports.map((s) => ({ ...s, fix: s.fix.filter((f) => f !== "uy") }));
    const { moves } = refusedBy({ ...model, supports });
    expect(moves.nodes.length).toBe(model.nodes.length);
    expect(Math.abs(moves.direction[1] ?? 0)).toBe(1);
  });

  it("a bar released along its axis at both ends and loaded along it is refused by the bar's name", () => {
    const model = lineModel({
      nodes: { a: [0, 0, 0], b: [3000, 0, 0] },
      sections: { s: section },
      beams: { loose: { i: "a", j: "b", section: "s", rel_i: ["ux"], rel_j: ["ux"] } },
      supports: { a: ALL, b: ALL },
      load: { beam_udl: [{ beam: "loose", q: [1, 0, 0] }] },
    });
    expect(refusedBy(model).refused).toContain("loose");
  });
});

describe("a structure that only looks loose is solved", () => {
  it("a very slender beam in 400 pieces, stiffness ratio of bending to stretching 1e-7 and less", () => {
    const wire = { ...section, A: 100_000, Iy: 50, Iz: 50, J: 50 };
    const s = solved(
      lineModel(
        straightBeam(
          12_000,
          400,
          wire,
          { n0: ["ux", "uz", "ry"] },
          { nodal: [{ node: "n400", F: [0, 0, -0.001, 0, 0, 0] }] },
        ),
      ),
    );
    const formula = (0.001 * 12_000 ** 3) / (3 * wire.E * wire.Iy);
    expect(-(s.displacements["n400"]?.[2] ?? NaN) / formula).toBeCloseTo(1, 5);
  });

  it("links a million times stiffer than what they join", () => {
    const parts = straightBeam(6000, 2, section, { n0: ["ux", "uz"] }, tip(1));
    const far = [6000, 0, 0] as [number, number, number];
    const k = [1e9, 1e9, 1e9, 0, 0, 0] as const;
    const s = solved(
      lineModel({
        ...parts,
        nodes: { ...parts.nodes, post: far },
        links: { seat: { i: "post", j: "n2", k: [...k] } },
        supports: { ...parts.supports, post: ALL },
      }),
    );
    expect(s.links["seat"]?.[2]).toBeCloseTo(500, 4);
  });

  it("a pin-jointed truss whose joints could spin: P/2 in each leg at 45 degrees gives P/√2", () => {
    const legs = { section: "s", rel_i: ROTATIONS, rel_j: ROTATIONS };
    const s = solved(
      lineModel({
        nodes: { a: [0, 0, 0], b: [2000, 0, 0], top: [1000, 0, 1000] },
        sections: { s: section },
        beams: { left: { i: "a", j: "top", ...legs }, right: { i: "b", j: "top", ...legs } },
        supports: { a: ["ux", "uy", "uz"], b: ["ux", "uy", "uz"], top: ["uy"] },
        load: { nodal: [{ node: "top", F: [0, 0, -1000, 0, 0, 0] }] },
      }),
    );
    expect(Math.abs(s.memberEndForces["left"]?.[0] ?? NaN)).toBeCloseTo(1000 / Math.SQRT2, 6);
    expect(s.displacements["top"]?.slice(3)).toEqual([0, 0, 0]);
  });

  it("but a moment on such a joint is refused, naming the joint and the axis", () => {
    const legs = { section: "s", rel_i: ROTATIONS, rel_j: ROTATIONS };
    const { moves } = refusedBy(
      lineModel({
        nodes: { a: [0, 0, 0], b: [2000, 0, 0], top: [1000, 0, 1000] },
        sections: { s: section },
        beams: { left: { i: "a", j: "top", ...legs }, right: { i: "b", j: "top", ...legs } },
        supports: { a: ["ux", "uy", "uz"], b: ["ux", "uy", "uz"], top: ["uy"] },
        load: { nodal: [{ node: "top", F: [0, 0, 0, 0, 5, 0] }] },
      }),
    );
    expect(moves).toEqual({ nodes: ["top"], direction: [0, 0, 0, 0, 1, 0] });
  });

  it("a sheet in an oblique plane whose inner point nothing holds out of the plane", () => {
    const at = (u: number, v: number): [number, number, number] => [u * Math.SQRT1_2, u * Math.SQRT1_2, v];
    const ids = [0, 1, 2].flatMap((c) => [0, 1, 2].map((r) => [c, r] as const));
    const model = lineModel({
      nodes: Object.fromEntries(ids.map(([c, r]) => [`${c}${r}`, at(c * 300, r * 900)])),
      sections: {},
      panels: Object.fromEntries(
        [0, 1].flatMap((c) =>
          [0, 1].map((r) => [
            `p${c}${r}`,
            {
              nodes: [`${c}${r}`, `${c + 1}${r}`, `${c + 1}${r + 1}`, `${c}${r + 1}`] as [
                string,
                string,
                string,
                string,
              ],
              Gt: 115_638,
              Ev: 340_585,
              Eh: 333,
            },
          ]),
        ),
      ),
      supports: Object.fromEntries(
        ids.filter(([c, r]) => c !== 1 || r !== 1).map(([c, r]) => [`${c}${r}`, ["ux", "uy", "uz"] as FreedomName[]]),
      ),
      load: { nodal: [{ node: "11", F: [0, 0, -1000, 0, 0, 0] }] },
    });
    const s = solved(model);
    expect((s.displacements["11"]?.[2] ?? NaN) < 0).toBe(true);
    expect(s.displacements["11"]?.[0]).toBeCloseTo(s.displacements["11"]?.[1] ?? NaN, 12);
    const pushed = { ...model, cases: { load: { nodal: [{ node: "11", F: [100, -100, 0, 0, 0, 0] as const }] } } };
    expect(refusedBy(pushed).moves.nodes).toEqual(["11"]);
  });
});
