import { describe, expect, it } from "vitest";
import { ALL, bendingSection, lineModel, solved, type Parts } from "./line-model.ts";

/*
 * A side wall pushed along its top rail. Published studies of containers find that the local deformation under a force at one fitting
 * far exceeds overall shear, so that a push at a point and an even one are not equivalent (Zha and Zuo 2016, existence from memory). Derived: a
 * rail of E A on a sheet that resists k = Gt/h along it. Even push: P/(k L). At one end: P β/k · coth(β L), β = √(k/(E A)).
 */
const [L, h, n] = [12_000, 2400, 240];
const [E, A, Gt] = [200_000, 684, 121_400];
const k = Gt / h;
const beta = Math.sqrt(k / (E * A));

const at = Array.from({ length: n + 1 }, (_, i) => i);
const node = (row: "t" | "b", i: number) => `${row}${i}`;
const endsOfStrips = at.slice(1);

/** Along-wall movement of the pushed end under the forces at the nodes of the top rail. */
function pushedEndMm(force: (i: number) => number): number {
  const held: Parts["supports"] = {};
  for (const i of at) {
    held[node("b", i)] = ALL;
    held[node("t", i)] = ALL.filter((freedom) => freedom !== "ux");
  }
  const s = solved(
    lineModel({
      nodes: Object.fromEntries(
        at.flatMap((i) => [
          [node("t", i), [(L * i) / n, 0, h]],
          [node("b", i), [(L * i) / n, 0, 0]],
        ]),
      ),
      sections: { rail: bendingSection(E, 371_412, A) },
      beams: Object.fromEntries(
        endsOfStrips.map((i) => [`rail${i}`, { i: node("t", i - 1), j: node("t", i), section: "rail" }]),
      ),
      panels: Object.fromEntries(
        endsOfStrips.map((i) => [
          `p${i}`,
          { nodes: [node("b", i - 1), node("b", i), node("t", i), node("t", i - 1)] as const, Gt },
        ]),
      ) as Parts["panels"] & object,
      supports: held,
      load: { nodal: at.map((i) => ({ node: node("t", i), F: [force(i), 0, 0, 0, 0, 0] as const })) },
    }),
  );
  return s.displacements[node("t", 0)]?.[0] ?? NaN;
}

describe("a side wall of 40 ft pushed along its top with 10 kN", () => {
  const evenly = pushedEndMm((i) => (10_000 / n) * (i === 0 || i === n ? 0.5 : 1));
  const atOneEnd = pushedEndMm((i) => (i === 0 ? 10_000 : 0));

  it("evenly goes by P h/(Gt L) = 0.01647 mm", () => {
    expect(evenly).toBeCloseTo((10_000 * h) / (Gt * L), 7);
    expect(evenly).toBeCloseTo(0.01647, 5);
  });

  it("at one fitting gives there β L coth(β L) = 7.30 times as much", () => {
    expect(beta * L).toBeCloseTo(7.297, 3);
    expect(Math.abs(atOneEnd / evenly / 7.297 - 1)).toBeLessThan(2e-3);
  });
});
