import { describe, expect, it } from "vitest";
import { containerMembers } from "../../src/catalog/sections/container-members.ts";
import { solveFrame } from "../../src/frame.ts";
import { inOrder } from "../../src/geometry/in-order.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import type { AnalyticalModel, ModelCase } from "../../src/model/analytical-model.ts";
import { bearingPlan } from "../../src/model/bearing-plan.ts";
import { usualAssumptions } from "../../src/model/model-assumptions.ts";
import { twistHolds } from "../../src/model/twist-holds.ts";
import { unitFragment } from "../../src/model/unit-fragment.ts";
import { unitLinesOf } from "../../src/model/unit-lines-of.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";
import { ordinarySchemes } from "../strength/ordinary-schemes/ordinary-schemes.ts";

// The upper unit of an overhang of 1 m: 40 ft, seats under both bottom rails 10 985 mm from its front posts. Cross members stand
// 11 985/39 = 307.31 mm apart: the nearest is the 36th at 11 063 mm, 78 mm off, the next the 35th at 10 756 mm, 229 mm off.
const scheme = inOrder(ordinarySchemes["an overhang of 1 m"] ?? drawnUnit({}));
const analysis = analyse(scheme);
const upper = analysis.structure.building.units.find(({ id }) => id === "unit-02");
if (upper === undefined) throw new Error("the scheme has an upper unit");
const lines = unitLinesOf(analysis.structure, bearingPlan(analysis), upper, usualAssumptions);
const built = unitFragment(lines, "upper");
const seat = lines.seats.find(({ side, rail }) => side === "right" && rail === "bottom");
if (seat === undefined) throw new Error("it stands on a seat");

/** Forces at the ends of the lines of the unit by itself, held at the feet of its corner posts. */
function solved(load: ModelCase, { fragment, corners }: typeof built = built) {
  const feet = (["front", "door"] as const).flatMap((end) =>
    (["left", "right"] as const).map((side) => corners(end, side, "foot")),
  );
  const model: AnalyticalModel = {
    ...fragment,
    ...{ springs: [], links: [], combos: { all: { load: 1 } }, cases: { load } },
    supports: feet.map((node) => ({ node, fix: ["ux", "uy", "uz"], compression_only: false })),
  };
  const answer = solveFrame(model).combos["all"];
  if (answer === undefined || "refused" in answer) throw new Error("it stands");
  const place = (id: string) => fragment.nodes.find((node) => node.id === id) ?? { x: NaN, y: NaN, z: NaN };
  return fragment.beams.map((beam) => ({
    ...{ kind: beam.id.slice(0, beam.id.indexOf("#")), from: place(beam.i), to: place(beam.j) },
    forces: answer.memberEndForces[beam.id] ?? [],
  }));
}

const H = 10_000;
const uOf = (x: number): number => x + lines.lengthMm / 2;

describe("a force across at a seat under a bottom rail", () => {
  it("finds the nearest cross member, and the next on the other side of the seat", () => {
    const holds = twistHolds(lines);
    expect(holds.map(({ side }) => side).toSorted()).toEqual(["left", "right"]);
    for (const { member, farMember, seatU, holdU, farU } of holds) {
      expect([member, farMember]).toEqual([36, 35]);
      expect([seatU, holdU, farU].map(Math.round)).toEqual([10_985, 11_063, 10_756]);
    }
  });

  const all = solved({ nodal: [{ node: built.bearingPoint(seat), F: [0, H, 0, 0, 0, 0] }] });
  const right = all.filter(({ kind, from }) => kind === "bottomRail" && from.y < 0);
  const torsionAt = (u: number): number =>
    Math.abs(right.find(({ from, to }) => uOf(from.x) < u && u < uOf(to.x))?.forces[3] ?? NaN);
  const endMoments = all
    .filter(({ kind }) => kind === "cross")
    .map(({ from, forces }) => ({ u: uOf(from.x), right: Math.abs(forces[4] ?? 0), left: Math.abs(forces[10] ?? 0) }));

  // An independent dense model of the same: the turns of the rail's stations, G J/l between them, 3 E I/L of the two cross members
  // that are not pinned, the couple H × 90 mm (rail axis above the fittings' underside) at the seat, both ends held by the posts.
  // By the lever alone, cross members that do not turn at all, 229/307 of it goes to the nearer and 78/307 to the other.
  it("goes as a couple H × 90 mm into the cross members on either side, as a chain of bars in torsion has it", () => {
    const [near, far] = [11_063, 10_756].map((at) => endMoments.find(({ u }) => Math.abs(u - at) < 1)?.right ?? NaN);
    const chain = chainInTorsion();
    expect((near ?? NaN) + (far ?? NaN)).toBeGreaterThan(0.97 * H * 90);
    expect((near ?? NaN) / chain.heldNmm).toBeCloseTo(1, 2);
    expect((far ?? NaN) / chain.farNmm).toBeCloseTo(1, 2);
    expect((near ?? NaN) / (H * 90)).toBeCloseTo(229 / 307, 1);
    expect(torsionAt(11_020) / chain.nearNmm).toBeCloseTo(1, 2);
    expect(torsionAt(10_700)).toBeLessThan(0.02 * H * 90);
  });

  it("bends no other cross member at its end, and none on the other side", () => {
    for (const { u, left, right: own } of endMoments) {
      expect(left).toBeLessThan(0.02 * H * 90);
      if (Math.abs(u - 11_063) > 1 && Math.abs(u - 10_756) > 1) expect(own).toBeLessThan(1);
    }
  });
});

// The same seat from one cross member to the next, 10 755.8 to 11 063.1 mm from the front posts. By hand: on either side a bar of
// G J = 1.055e10 N·mm² (J as below) and behind it 3 E I/L of a cross member, in series; the couple goes as these are stiff.
describe("a seat that is moved along its rail", () => {
  const under = (u: number) => {
    const seats = lines.seats.map((one) => (one.rail === "bottom" ? { ...one, u } : one));
    const moved = unitFragment({ ...lines, seats }, "moved");
    const own = seats.find(({ side, rail }) => side === "right" && rail === "bottom") ?? seat;
    const all = solved({ nodal: [{ node: moved.bearingPoint(own), F: [0, H, 0, 0, 0, 0] }] }, moved);
    const ends = all.flatMap(({ kind, from, forces }) =>
      kind === "cross" ? [{ u: uOf(from.x), Nmm: Math.abs(forces[4] ?? 0) }] : [],
    );
    return (at: number): number => ends.find((end) => Math.abs(end.u - at) < 1)?.Nmm ?? NaN;
  };

  const member = (3 * 200_000 * containerMembers["cross member"].ixMm4) / 2259;
  const behind = (mm: number): number => 1 / (1 / member + mm / 1.055e10);

  it("hands its couple from one cross member to the next as bar and cross member in series are stiff", () => {
    for (const share of [0.1, 0.3, 0.5, 0.7, 0.9]) {
      const near = under(10_755.8 + share * 307.3);
      const [before, after] = [behind(share * 307.3), behind((1 - share) * 307.3)];
      expect(near(11_063.1) / (H * 90)).toBeCloseTo(after / (before + after), 1.5);
      expect(near(10_755.8) / (H * 90)).toBeCloseTo(before / (before + after), 1.5);
    }
  });

  it("has no jump where it passes the middle, nor in the one it passes under", () => {
    const [before, after] = [under(10_755.8 + 0.497 * 307.3), under(10_755.8 + 0.503 * 307.3)];
    for (const at of [10_755.8, 11_063.1]) expect(Math.abs(before(at) - after(at))).toBeLessThan(0.01 * H * 90);
    const [short, past] = [under(11_062), under(11_064)];
    expect(Math.abs(short(11_063.1) - past(11_063.1))).toBeLessThan(0.01 * H * 90);
  });
});

describe("a load on the floor", () => {
  // modelling of the reference: the channel rail cannot hold cross members in torsion. The one that holds a seat is not pinned,
  // and yet what the rail gives it back is nothing beside w L²/8 of it in the middle.
  it("bends the end of the cross member that holds a seat by less than a fiftieth of its middle", () => {
    const all = built.carriers.filter(({ face, beam }) => face === "floor" && beam.startsWith("cross"));
    const w = 1.5;
    const answer = solved({ beam_udl: all.map(({ beam }) => ({ beam, q: [0, 0, -w] })) });
    const ends = answer
      .filter(({ kind }) => kind === "cross")
      .flatMap(({ forces }) => [forces[4] ?? 0, forces[10] ?? 0]);
    const middle = (w * lines.widthMm * lines.widthMm) / 8;
    expect(Math.max(...ends.map(Math.abs)) / middle).toBeLessThan(0.02);
  });
});

// St Venant and warping together, a torque in the middle of a bar of length s held against turning at both ends and free to warp:
// φ = T s/(4 G J) · (1 − tanh(k)/k), k = (s/2) √(G J/E C_w) (Vlasov; as in tables of torsion, from memory). J = Σ b t³/3 =
// 231 × 4.5³/3 = 7017 mm⁴ and C_w = 3.956e8 mm⁶ by hand from the sectorial coordinates.
it("a rail between a seat and the nearest cross member is as stiff as a bar that warps, within 3 %", () => {
  const [E, G, J, cw, s] = [200_000, 200_000 / 2.6, 7017, 3.956e8, 308];
  const k = (s / 2) * Math.sqrt((G * J) / (E * cw));
  const exact = (s / (4 * G * J)) * (1 - Math.tanh(k) / k);
  const { bottomRailAtSeat } = usualAssumptions.sections;
  expect(s / (4 * G * bottomRailAtSeat.J) / exact).toBeGreaterThan(0.97);
  expect(s / (4 * G * bottomRailAtSeat.J) / exact).toBeLessThan(1.03);
});

/** Turns of the stations of the right rail by Gauss elimination of a dense matrix. */
function chainInTorsion(): { readonly heldNmm: number; readonly farNmm: number; readonly nearNmm: number } {
  const [G, E] = [200_000 / 2.6, 200_000];
  const pitch = lines.lengthMm / 39;
  const stations = [...Array.from({ length: 40 }, (_, n) => n * pitch), 10_985].toSorted((a, b) => a - b);
  const at = stations.indexOf(10_985);
  const n = stations.length;
  const matrix = stations.map(() => Array.from({ length: n + 1 }, () => 0));
  const add = (i: number, j: number, value: number): void => {
    const row = matrix[i];
    if (row !== undefined) row[j] = (row[j] ?? 0) + value;
  };
  // C_w and J as above; warping makes the bars between seat and cross members 12 E C_w/(G s²) stiffer
  const stiff = 7017 + (12 * E * 3.956e8) / (G * 308 * 308);
  const between = stations
    .slice(1)
    .map((to, b) => (G * (b === at || b === at - 1 ? stiff : 7017)) / (to - (stations[b] ?? 0)));
  between.forEach((k, b) => {
    for (const [i, j, sign] of [
      [b, b, 1],
      [b + 1, b + 1, 1],
      [b, b + 1, -1],
      [b + 1, b, -1],
    ] as const)
      add(i, j, sign * k);
  });
  const member = (3 * E * containerMembers["cross member"].ixMm4) / 2259;
  for (const held of [at - 1, at + 1]) add(held, held, member);
  for (const end of [0, n - 1]) add(end, end, 1e15);
  add(at, n, H * 90);
  for (let p = 0; p < n; p++)
    for (let r = p + 1; r < n; r++) {
      const share = (matrix[r]?.[p] ?? 0) / (matrix[p]?.[p] ?? NaN);
      for (let c = p; c <= n; c++) add(r, c, -share * (matrix[p]?.[c] ?? 0));
    }
  const turns = Array.from({ length: n }, () => 0);
  for (let r = n - 1; r >= 0; r--) {
    const known = turns.reduce((sum, turn, c) => (c > r ? sum + (matrix[r]?.[c] ?? 0) * turn : sum), 0);
    turns[r] = ((matrix[r]?.[n] ?? 0) - known) / (matrix[r]?.[r] ?? NaN);
  }
  const [farTurn, seatTurn, heldTurn] = [turns[at - 1] ?? NaN, turns[at] ?? NaN, turns[at + 1] ?? NaN];
  const nearNmm = (between[at] ?? NaN) * (seatTurn - heldTurn);
  return { heldNmm: member * heldTurn, farNmm: member * farTurn, nearNmm };
}
