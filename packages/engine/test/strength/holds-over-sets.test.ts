import { describe, expect, it } from "vitest";
import { strengthBasisFor } from "../../src/strength.ts";
import { strengthMemory } from "../../src/strength/strength-memory.ts";
import { strengthFrom } from "../../src/strength/strength-from.ts";
import { strengthGround } from "../../src/strength/strength-plan.ts";
import { StrengthShare } from "../../src/strength/strength-share.ts";
import type { ScreenedSet } from "../../src/strength/screened-set.ts";
import type { SolvedRun } from "../../src/strength/solve-runs.ts";
import { screenedSet } from "../../src/strength/screened-set.ts";
import { drawnUnit } from "./drawn-unit.ts";
import { firstSet } from "./one-run.ts";

const basis = strengthBasisFor("IBC 2021");
const scheme = drawnUnit({ type: "1CC" });
const ground = strengthGround(scheme, basis);
if (!ground.accepted) throw new Error("without hazards nothing is refused");
const share = new StrengthShare(ground, basis, strengthMemory());
const [run] = ground.firstOrder.runs;
if (run === undefined) throw new Error("there are runs");
const solved = share.screened("locks at play", 1, new Set([run.id]));

const lifted = (forceN: number, place: string): Pick<ScreenedSet, "holds"> => ({
  holds: [{ kind: "uplift", ownerId: "u1", places: [place], forceN, run: run.id }],
});
const judged = (rest: Partial<ScreenedSet>) => {
  const whole = [{ ...solved, ...lifted(10_000, "front left") }];
  const found = { leans: [], enlargement: 1, governing: share.results(solved.worsts.slice(0, 1)), beside: [] };
  const answer = strengthFrom(share, basis, { ...found, whole, rest: [{ ...solved, ...rest }] });
  if (!answer.accepted) throw new Error("it is judged");
  return answer;
};

describe("sets of assumptions that are solved for what governs alone", () => {
  it("are asked what nothing drawn holds as well, and the most of all is told", () => {
    expect(judged(lifted(12_000, "door left")).holds).toEqual([
      { kind: "uplift", ownerId: "u1", places: ["front left", "door left"], forceN: 12_000, run: run.id },
    ]);
  });

  it("leave a unit to the engineer where a run stands in none of them, though it does in the others", () => {
    const refusal = {
      refused: "No equilibrium",
      moves: { nodes: ["u1:0,0,0"], direction: [0, 0, 1, 0, 0, 0] as const },
    };
    const { units } = judged({ holds: [], refused: [{ run, set: firstSet(), refusal }] });
    expect(units[0]?.reasons.map(({ kind }) => kind)).toContain("moves");
  });

  it("are refused where their solution is no number, which would compare as within everything", () => {
    const broken = { residual: NaN } as unknown as SolvedRun;
    const set = { set: firstSet(), built: share.built, solved: [broken], refused: [] };
    expect(() => screenedSet([], [], set, 0)).toThrow(/no number/);
  });
});
