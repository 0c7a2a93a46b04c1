import { describe, expect, it } from "vitest";
import { loadFlow } from "../../src/load-flow.ts";
import { drawnUnit } from "./drawn-unit.ts";
import { secondOrder, E, type PlaneBar } from "../codes-steel/support/geometric-frame.ts";

// Dead load by stages on a dense frame that knows nothing of the model: a wall of three bays, rails and end posts that bend, its
// sheet as a diagonal in each bay. First the whole wall under its load; then the middle diagonal is cut, which lets go what it
// held at both its ends; what is left takes that up.
const bay = 2000;
const high = 2400;
const nodes = [0, 1, 2, 3].flatMap((n) => [[n * bay, 0] as const, [n * bay, high] as const]);
const bar = (from: number, to: number, inertiaMm4: number): PlaneBar => ({ from, to, inertiaMm4 });
const rails = [0, 2, 4].flatMap((n) => [bar(n, n + 2, 3e6), bar(n + 1, n + 3, 1e6)]);
const uprights = [0, 2, 4, 6].map((n) => bar(n, n + 1, n === 0 || n === 6 ? 5e6 : 1e3));
const sheet = (n: number) => bar(n, n + 3, 1);
const rest = [...rails, ...uprights, sheet(0), bar(5, 6, 1)];
const jambs = [bar(2, 3, 4e6), bar(4, 5, 4e6)];
const held = [0, 1, 19];
/** On the head beside the first bay: a third of it goes through the middle one. */
const dead = { 10: -30_000 };
const moved = (bars: readonly PlaneBar[], forces: Readonly<Record<number, number>>) =>
  secondOrder({ nodes, bars, held }, forces);

/** What the middle diagonal pulls its ends with, once cut no more: the forces it held, turned about. */
function letGo(whole: readonly number[]): Record<number, number> {
  const length = Math.hypot(bay, high);
  const [c, s] = [bay / length, high / length];
  const [dx, dy] = [(whole[15] ?? 0) - (whole[6] ?? 0), (whole[16] ?? 0) - (whole[7] ?? 0)];
  const pullN = ((E * 1e6) / length) * (c * dx + s * dy);
  return { 6: -pullN * c, 7: -pullN * s, 15: pullN * c, 16: pullN * s };
}

describe("a sheet that is cut under its load", () => {
  const whole = moved([...rest, sheet(2)], dead);

  it("leaves the rest as if it had been cut before: the sum of both stages is the one stage", () => {
    const released = moved(rest, letGo(whole));
    const once = moved(rest, dead);
    const most = Math.max(...once.map(Math.abs));
    expect(most).toBeGreaterThan(1);
    once.forEach((one, n) => expect(Math.abs((whole[n] ?? 0) + (released[n] ?? 0) - one)).toBeLessThan(1e-6 * most));
  });

  it("under which a frame was welded in lets down more than all at once, by at most what the whole sheet had let down", () => {
    const framed = [...rest, ...jambs];
    const staged = moved(framed, letGo(whole)).map((one, n) => one + (whole[n] ?? 0));
    const once = moved(framed, dead);
    // the middle bay leans: one end of its rails against the other
    const leanOf = (all: readonly number[]) => Math.abs((all[16] ?? 0) - (all[10] ?? 0));
    expect(leanOf(staged)).toBeGreaterThan(leanOf(once));
    expect(leanOf(staged) - leanOf(once)).toBeLessThanOrEqual(leanOf(whole));
  });
});

// Lean of an opening 2 m wide in the side of a 40 ft unit under its own dead load, by the model: the whole sheet lets it down by
// about a tenth of what the framed opening does. That much the assumption of shores is about.
describe("a frame in the side of a 40 ft unit", () => {
  const leanOf = (openings: Parameters<typeof drawnUnit>[0]["openings"] = []): number => {
    const flow = loadFlow(drawnUnit({ openings, imposedPa: 0 }));
    if (!flow.accepted) throw new Error("gravity alone has no hazards to refuse");
    const forces = flow.of({ run: "1.4D: D most" });
    const rail = (forces?.deflected.lines ?? [])
      .flatMap(({ points }) => points)
      .filter(({ at }) => at.yMm < -1000 && at.zMm > 2600)
      .toSorted((a, b) => a.at.xMm - b.at.xMm);
    const at = (xMm: number): number => {
      const next = rail.findIndex((point) => point.at.xMm >= xMm);
      const [p, q] = [rail[next - 1], rail[next]];
      if (p === undefined || q === undefined) throw new Error(`no rail at ${xMm}`);
      const share = (xMm - p.at.xMm) / Math.max(q.at.xMm - p.at.xMm, 1e-9);
      return p.movedMm.zMm + share * (q.movedMm.zMm - p.movedMm.zMm);
    };
    return Math.abs(at(3500 - 6096) - at(1500 - 6096));
  };

  it("is let down ten times as much as the whole sheet was", () => {
    const framed = leanOf([{ face: "right", framed: true, fromMm: 1500, widthMm: 2000 }]);
    expect(leanOf() / framed).toBeGreaterThan(0.05);
    expect(leanOf() / framed).toBeLessThan(0.15);
  });
});
