import { describe, expect, it } from "vitest";
import type { SolvedRun } from "../../src/strength/solve-runs.ts";
import type { StrengthPart } from "../../src/strength/strength-part.ts";
import { screen } from "../../src/strength/screen.ts";
import { worstOfFew } from "../../src/strength/worst-of-few.ts";

/** Runs of two sets, some of which need something held. */
const [play, tied] = ["locks at play", "locks tied"].map((id) =>
  Array.from({ length: 6 }, (_, n): SolvedRun => {
    const run = { id: `run ${n}`, level: "strength", factors: {}, combination: {} };
    // parts of this test ask for nothing else
    return { run, set: { id }, held: n % 3 === 2 ? ["u1"] : [] } as unknown as SolvedRun;
  }),
);
const runs = [play ?? [], tied ?? []];

function part(id: string, uses: (run: number, set: number) => number, sureOf?: string) {
  const asked: number[] = [];
  const one = {
    ...{ id, ownerId: "u1", element: "jamb", place: "", level: "strength" },
    ...(sureOf !== undefined && { sureOf }),
    use: (solved: SolvedRun, above = 0) => {
      const use = uses(Number(solved.run.id.slice(-1)), solved.set.id === "locks tied" ? 1 : 0);
      asked.push(above);
      // what is not above may be any value that is not either
      return use > above ? use : above;
    },
  } as unknown as StrengthPart;
  return { one, asked };
}

type Found = Omit<ReturnType<typeof worstOfFew>[number], "part">;
const govern = (found: readonly Found[]) =>
  found.map(({ asDrawn, heldDown }) =>
    [asDrawn, heldDown].map((one) => one && [one.use, one.solved.run.id, one.solved.set.id]),
  );

describe("the worst of few runs", () => {
  it("is that of the screening of all runs, whether it comes early or late, in one set or the other, held or as drawn", () => {
    const parts = [
      part("rising", (run, set) => run / 10 + set / 20).one,
      part("falling", (run, set) => 1 - run / 10 - set / 20).one,
      // of runs that cannot be told apart the first governs
      part("alike", (run) => 0.7 * (1 + run * 1e-11)).one,
      part("refused", (run) => (run === 4 ? Infinity : 0.1)).one,
    ];
    const all = runs.reduce<ReturnType<typeof screen>>((found, ofSet) => screen(parts, ofSet, found), []);
    expect(govern(worstOfFew(parts, runs))).toEqual(govern(all));
    expect(govern(all)).toHaveLength(4);
  });

  it("leaves out a part on which nothing acts, and what is sure of one that is within its strength", () => {
    const idle = part("idle", () => 0);
    const within = part("within, sure", (run) => run / 10, "within");
    const beyond = part("beyond, sure", (run) => 0.9 + run / 10, "beyond");
    const found = worstOfFew([idle.one, within.one, beyond.one], runs);
    expect(found.map(({ part: { id } }) => id)).toEqual(["beyond, sure"]);
    expect(Math.min(...within.asked)).toBeGreaterThan(0.99);
  });

  it("asks a part only for a use above what governs it", () => {
    const { one, asked } = part("falling", (run) => 1 - run / 10);
    worstOfFew([one], runs);
    // runs 2 and 5 need something held: they have a worst of their own
    expect(asked).toEqual([0, 1, 0, 1, 1, 0.8, 1, 1, 0.8, 1, 1, 0.8]);
  });

  it("takes no number that is none for a use", () => {
    const broken: StrengthPart = { ...part("broken", () => 1).one, use: () => NaN };
    expect(() => worstOfFew([broken], runs)).toThrow("broken has no utilisation in run 0");
  });
});
