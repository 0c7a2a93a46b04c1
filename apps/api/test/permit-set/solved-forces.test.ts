import { loadFlow } from "@cornerway/engine";
import { beforeAll, describe, expect, it } from "vitest";
import { makeSet } from "../../src/permit-set/make-set.ts";
import type { Block } from "../../src/permit-set/paper/ink.ts";
import type { PermitSet } from "../../src/permit-set/permit-set.ts";
import { solve, supportsByCase } from "../../src/permit-set/solved.ts";
import { smallScheme, sourceOf } from "../support/sample-set.ts";

const wordsOf = ({ inks, children = [] }: Block): string[] => [
  ...inks.flatMap((ink) => (ink.kind === "text" ? [ink.text] : [])),
  ...children.flatMap(wordsOf),
];
const pageWords = (set: PermitSet): string[] => set.pages.map(({ blocks }) => blocks.flatMap(wordsOf).join(" "));

function made(source: ReturnType<typeof sourceOf>): PermitSet {
  const outcome = makeSet(source);
  if (!outcome.ok) throw new Error(outcome.why.join("\n"));
  return outcome.set;
}

describe("a set whose strength was run", () => {
  let words: string[];
  const source = sourceOf(smallScheme(), { strength: true });
  beforeAll(() => {
    words = pageWords(made(source));
  }, 120_000);
  const page = (has: string): string => words.find((each) => each.includes(has)) ?? "";

  it("has a sheet of the load path as solved, under the sum that governs most, unit by unit", () => {
    const told = page("the sum that governs most");
    expect(told).toMatch(/G1 stands with [\d.]+ kN/);
    expect(told).toContain("What the ground gives");
  });

  it("gives the reactions of every support case by case", () => {
    const told = page("Reactions by case, as solved");
    for (const heading of ["D", "L", "Lr", "W most", "W least", "E most", "E least", "W sideways"])
      expect(told).toContain(heading);
  });

  it("gives the largest and the least force of each member, as the engine has them", () => {
    const told = words.filter((each) => each.includes("N least")).join(" ");
    expect(told).toContain("front corner post");
    const flow = loadFlow(source.scheme);
    const members = flow.accepted ? flow.members() : [];
    const post = members.find(({ part, place }) => part === "front corner post" && place === "left");
    expect(told).toContain((post?.pressed.value ?? NaN).toFixed(1));
  });

  it("adds up: what the supports get under dead load is the sum of all that is dead", () => {
    const solved = solve(source);
    const dead = source.proof?.report.cases.find(({ id }) => id === "D most");
    const sum = supportsByCase(solved?.cases ?? []).reduce((all, support) => all + (support.dead ?? 0), 0);
    expect(sum).toBeCloseTo(-(dead?.zKn ?? NaN), 1);
  });
});

describe("a set whose strength was not run, or by another engine", () => {
  it("says so and prints no such forces", () => {
    const words = pageWords(made(sourceOf(smallScheme()))).join(" ");
    expect(words).toContain("printed only where strength was run");
    expect(words).not.toContain("the sum that governs most");
  });

  it("is not solved anew by an engine that did not judge it", () => {
    const source = sourceOf(smallScheme(), { strength: true });
    const other = { ...source.assessment, engineVersion: "0.0.1" };
    expect(solve({ ...source, assessment: other })).toBeNull();
  });
});
