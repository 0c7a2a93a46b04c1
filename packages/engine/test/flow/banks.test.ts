import { describe, expect, it } from "vitest";
import { passages, type Bank } from "../../src/flow/banks.ts";

const bank = (port: Bank["port"], forceN: number): Bank => ({ port, comesIn: forceN > 0, forceN: Math.abs(forceN) });
const told = (banks: readonly Bank[]): string[] =>
  passages(banks)
    .map(({ by, out, fromN, toN }) => `${by}→${out} ${fromN}–${toN}`)
    .toSorted();

// Sides clockwise: 0 up, 1 right, 2 down, 3 left. Who comes down has the right side of the drawing at his left.
describe("what comes in at a point", () => {
  it("from above turns right with its left part and goes on down with the rest", () => {
    expect(told([bank(0, 100), bank(1, -10), bank(2, -90)])).toEqual(["0→1 0–10", "0→2 10–100"]);
  });

  it("from the left joins what comes down at the side it comes from", () => {
    const joined = passages([bank(0, 100), bank(2, -130), bank(3, 30)]);
    expect(joined).toEqual([
      { by: 0, fromN: 0, toN: 100, out: 2, outFromN: 0 },
      { by: 3, fromN: 0, toN: 30, out: 2, outFromN: 100 },
    ]);
  });

  it("does not cross: what comes down turns left before what comes from the right", () => {
    expect(told([bank(0, 100), bank(1, 10), bank(2, -90), bank(3, -20)])).toEqual([
      "0→2 0–80",
      "0→3 80–100",
      "1→2 0–10",
    ]);
  });

  it("goes round by the first side where that is nearer", () => {
    expect(told([bank(0, -50), bank(3, 50)])).toEqual(["3→0 0–50"]);
  });

  it("goes out whole, whatever comes together", () => {
    const all = passages([bank(0, 7), bank(1, -3), bank(4, 5), bank(2, -11), bank(3, 2)]);
    expect(all.reduce((sum, { fromN, toN }) => sum + toN - fromN, 0)).toBe(14);
  });
});
