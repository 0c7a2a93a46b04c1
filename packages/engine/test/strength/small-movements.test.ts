import { describe, expect, it } from "vitest";
import { smallMovements } from "../../src/strength/small-movements.ts";
import { drawnUnit } from "./drawn-unit.ts";
import { oneRun, ownWeight } from "./one-run.ts";

const scheme = drawnUnit({ type: "1CC" });
const { frame } = oneRun(scheme, [ownWeight(scheme, 23_000)]).solved;
const moved = (mm: number) => ({
  nodeIds: [...Object.keys(frame.displacements), "u1:corner"],
  movement: Float64Array.from([...Object.values(frame.displacements).flat(), mm, 0, 0, 0, 0, 0]),
});

describe("smallMovements", () => {
  it("leaves a solution alone whose points move up to 300 mm", () => {
    expect(smallMovements(moved(300))).not.toHaveProperty("refused");
  });

  it("refuses one that swings away, naming node and millimetres", () => {
    expect(smallMovements(moved(12_093))).toEqual({
      refused: "No equilibrium near the drawn shape: node u1:corner would move 12093 mm",
      moves: { nodes: ["u1:corner"], direction: [1, 0, 0, 0, 0, 0] },
    });
  });
});
