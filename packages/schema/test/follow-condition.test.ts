import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  conditionState,
  conditionWaitsFor,
  owingRoles,
  refuseConditionStep,
  roles,
  type Author,
  type Condition,
  type ConditionStep,
  type Role,
} from "../src/index.ts";

const person = (at: number, role: Role): Author => ({
  ...{ id: `00000000-0000-4000-8000-00000000000${at}`, name: `Person ${at}`, role },
});
/** The last one is owner and engineer, which one person may be. */
const people: readonly Author[] = [
  ...roles.map((role, at) => person(at, role)),
  ...(["owner", "engineer"] as const).map((role) => person(9, role)),
];
const stepKinds = ["met", "closed", "reopened"] as const;
type Move = { by: Author; step: (typeof stepKinds)[number] };

const moves = fc.array(fc.record<Move>({ by: fc.constantFrom(...people), step: fc.constantFrom(...stepKinds) }), {
  minLength: 10,
  maxLength: 60,
});
const raised = fc
  .record({
    owedBy: fc.constantFrom(...owingRoles),
    author: fc.constantFrom(person(9, "engineer"), person(2, "checker")),
  })
  .filter(({ owedBy, author }) => owedBy !== author.role)
  .map(({ owedBy, author }): Condition => ({
    ...{ id: "00000000-0000-4000-8000-0000000000cc", text: "Show the weld.", owedBy, number: 1, source: "stamp" },
    ...{ sourceId: "00000000-0000-4000-8000-0000000000dd", revision: "A", author },
    ...{ raisedAt: "2026-01-01T00:00:00.000Z", steps: [] },
  }));

function walk(first: Condition, tried: readonly Move[]) {
  let condition = first;
  const taken: { move: Move; before: Condition }[] = [];
  for (const move of tried) {
    if (refuseConditionStep(condition, move.step, move.by) !== undefined) continue;
    taken.push({ move, before: condition });
    condition = { ...condition, steps: [...condition.steps, stepOf(move)] };
  }
  return { condition, taken };
}

function stepOf({ by, step }: Move): ConditionStep {
  const done = { id: "00000000-0000-4000-8000-0000000000aa", by, at: "2026-01-01T00:00:00.000Z" };
  return step === "closed" ? { step, ...done } : { step, ...done, text: "Words." };
}

describe("a condition", () => {
  it("stays open until it is said to be met, and met until the role that raised it closes it", () => {
    let closings = 0;
    fc.assert(
      fc.property(raised, moves, (first, tried) => {
        for (const { move, before } of walk(first, tried).taken) {
          if (move.step === "met") expect(move.by.role).toBe(first.owedBy);
          else expect(move.by.role).toBe(first.author.role);
          if (move.step !== "closed") continue;
          closings += 1;
          expect(conditionState(before)).toBe("met");
          expect(before.steps.at(-1)?.by.id).not.toBe(move.by.id);
        }
      }),
      { numRuns: 500 },
    );
    expect(closings).toBeGreaterThan(20);
  });

  it("waits for a role that can take its next step, and for nobody once it is closed", () => {
    fc.assert(
      fc.property(raised, moves, (first, tried) => {
        const { condition } = walk(first, tried);
        const waits = conditionWaitsFor(condition);
        const someone = person(7, waits ?? "reader");
        const can = stepKinds.some((step) => refuseConditionStep(condition, step, someone) === undefined);
        expect([waits === null, can]).toEqual(conditionState(condition) === "closed" ? [true, false] : [false, true]);
      }),
    );
  });
});
