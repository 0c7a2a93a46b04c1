import { describe, expect, it } from "vitest";
import { heldNext } from "../../src/strength/held-groups.ts";
import type { StrengthRun } from "../../src/strength/run-plan.ts";

const run = (id: string): StrengthRun => ({
  id,
  level: "strength",
  factors: {},
  combination: {
    id,
    level: "strength",
    terms: [],
    clause: { document: "none", edition: "", place: "a sample", certainty: "common practice" },
  },
});
const everything = ["a", "b", "c"];
const heldIn = (groups: ReturnType<typeof heldNext>) =>
  groups.map(({ held, runs }) => [held, runs.map(({ id }) => id)]);

describe("what is held for runs that fell", () => {
  it("is what was held and what moved besides, once for all runs that ask for the same", () => {
    const fallen = [
      { run: run("1"), held: ["b"], moving: ["a", "b"] },
      { run: run("2"), held: ["a"], moving: ["b"] },
      { run: run("3"), held: [], moving: ["c"] },
    ];
    expect(heldIn(heldNext(fallen, everything, false))).toEqual([
      [
        ["a", "b"],
        ["1", "2"],
      ],
      [["c"], ["3"]],
    ]);
  });

  it("is everything at last, and where nothing moved that was not held already", () => {
    const again = { run: run("1"), held: ["a"], moving: ["a"] };
    expect(heldIn(heldNext([again], everything, false))).toEqual([[everything, ["1"]]]);
    const other = { run: run("2"), held: ["a"], moving: ["b"] };
    expect(heldIn(heldNext([again, other], everything, true))).toEqual([[everything, ["1", "2"]]]);
  });

  it("is nothing for what falls with everything held", () => {
    expect(heldNext([{ run: run("1"), held: everything, moving: ["a"] }], everything, true)).toEqual([]);
  });
});
