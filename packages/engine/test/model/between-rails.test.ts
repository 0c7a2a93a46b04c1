import { describe, expect, it } from "vitest";
import type { FreeLoad, Scheme } from "@cornerway/schema";
import { analyse } from "../../src/load-path/analysis.ts";
import { deadCase } from "../../src/loads/dead-cases.ts";
import { freeLoadsOf } from "../../src/loads/free-loads.ts";
import { buildModel } from "../../src/model/build-model.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";

const plain = drawnUnit({ type: "1CC" });

/** Nodal forces and lines of one case on the only container, in its own axes. */
function loadsOf(scheme: Scheme, id: string, loads: ReturnType<typeof freeLoadsOf>) {
  const { model } = buildModel(analyse(scheme), [{ id, symbol: "D", loads }], { all: { [id]: 1 } });
  const [unit] = model.units;
  if (unit === undefined) throw new Error("one container is drawn");
  const { nodes, beams } = unit.fragment;
  const at = (name: string) => nodes.find(({ id: known }) => known === name) ?? { x: NaN, y: NaN, z: NaN };
  const { nodal = [], beam_udl = [] } = unit.loads[id] ?? {};
  const lines = beam_udl.map(({ beam, q }) => {
    const member = beams.find(({ id: known }) => known === beam);
    const [from, to] = [at(member?.i ?? ""), at(member?.j ?? "")];
    return { beam, q, from, to, lengthMm: Math.abs(to.x - from.x) + Math.abs(to.y - from.y) + Math.abs(to.z - from.z) };
  });
  return { nodal: nodal.map(({ node, F }) => ({ ...at(node), F })), lines };
}

/** 10 kN on the floor or roof, 2.0 m from the front end and 0.5 m from the right side of 2.438 m. */
const tank = (surface: "floor" | "roof"): FreeLoad => ({
  ...{ id: "q", tag: "Q", containerId: "u1", surface, case: "plant", note: "as told", shape: "point" },
  ...{ xUm: 2_000_000, yUm: 500_000, downN: 10_000, alongXN: 0, alongYN: 0 },
});

describe("a force on a floor or roof between the side rails", () => {
  it.each(["floor", "roof"] as const)("comes down on both rails of a %s by its lever and twists neither", (surface) => {
    const scheme = { ...plain, freeLoads: [tank(surface)] };
    const { nodal, lines } = loadsOf(scheme, "P", freeLoadsOf(scheme, "plant"));
    const down = [
      ...nodal.map(({ y, F }) => ({ y, downN: -F[2] })),
      ...lines.map(({ q, from, to, lengthMm }) => ({ y: (from.y + to.y) / 2, downN: -q[2] * lengthMm })),
    ];
    // Statics: the sum is the force, and its turn about the middle line that of 10 kN at 1219 − 500 = 719 mm right of it.
    expect(down.reduce((sum, { downN }) => sum + downN, 0)).toBeCloseTo(10_000, 6);
    expect(down.reduce((sum, { y, downN }) => sum + y * downN, 0)).toBeCloseTo(-719 * 10_000, 3);
    expect(nodal.every(({ F }) => F[3] === 0)).toBe(true);
  });

  it("bends the nearest cross member by P L/4, as at its middle", () => {
    const scheme = { ...plain, freeLoads: [tank("floor")] };
    const [line, ...others] = loadsOf(scheme, "P", freeLoadsOf(scheme, "plant")).lines;
    if (line === undefined) throw new Error("a cross member is loaded");
    expect(others).toEqual([]);
    expect(line.beam).toMatch(/^cross#/);
    expect((-line.q[2] * line.lengthMm * line.lengthMm) / 8).toBeCloseTo((10_000 * line.lengthMm) / 4, 3);
    // within half a bay of 2000 mm from the front end of 6058 mm
    expect(Math.abs(line.from.x - (2000 - 3029))).toBeLessThan(6058 / 10);
  });

  it("is what the frame of a hatch weighs", () => {
    const hatch: Scheme["openings"][number] = {
      ...{ id: "h1", tag: "H1", containerId: "u1", face: "floor", use: "hatch", framed: true },
      ...{ offsetUm: 1_000_000, sillUm: 719_000, widthUm: 1_500_000, heightUm: 1_000_000 },
    };
    const scheme = { ...plain, openings: [hatch] };
    const { nodal } = loadsOf(
      scheme,
      "D",
      deadCase(scheme, "least").loads.filter(({ kind }) => kind === "point"),
    );
    expect(nodal.length).toBeGreaterThan(0);
    expect(nodal.every(({ F }) => F[3] === 0)).toBe(true);
  });
});
