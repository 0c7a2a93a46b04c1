import { loadFlow } from "@cornerway/engine";
import { Post, resultDigest } from "@cornerway/schema";
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

describe("a set with a post that the line model has not", () => {
  // 3.37 in² of steel (AISC Manual table 1-12, from memory), 2.4 m long: 2174 mm² · 2.4 m · 7850 kg/m³ · 9.80665 m/s² = 0.40 kN
  it("is printed, and says by whose steel dead load and reactions differ, and by how much", () => {
    const scheme = smallScheme();
    const idle = {
      id: "p1",
      tag: "P1",
      section: "HSS 4x4x1/4",
      baseZUm: 0,
      topZUm: 2_400_000,
      xUm: 3_000_000,
      yUm: 0,
      turnMdeg: 0,
    };
    const posts = [Post.parse(idle)];
    const words = pageWords(made(sourceOf({ ...scheme, posts }, { strength: true }))).join(" ");
    expect(words.replaceAll(/\s+/g, " ")).toContain("That of D is 0.4 kN less, the steel of P1");
  });
});

describe("a set whose strength was not run, or was by another engine", () => {
  it("says so and prints no such forces", () => {
    const words = pageWords(made(sourceOf(smallScheme()))).join(" ");
    expect(words).toContain("printed only where strength was run and they were recorded");
    expect(words).not.toContain("the sum that governs most");
  });

  it("tells the forces its record has, to the last figure, whatever engine prints; only the strokes need the engine that judged", () => {
    const source = sourceOf(smallScheme(), { strength: true });
    const assessment = { ...source.assessment, engineVersion: "0.0.1" };
    const forces = source.proof?.report.forces;
    expect(forces?.members.length).toBeGreaterThan(0);
    expect(solve({ ...source, assessment })).toEqual({ ...forces, governing: null });
    const recorded = resultDigest(source.revision.contentDigest, assessment, source.proof ?? undefined);
    const words = pageWords(made({ ...source, assessment, resultDigest: recorded })).join(" ");
    expect(words).toContain("Largest and least force of each member");
    expect(words).not.toContain("the sum that governs most");
  });

  it("is refused where a force in its record was altered", () => {
    const source = sourceOf(smallScheme(), { strength: true });
    const altered = structuredClone(source);
    const [member] = altered.proof?.report.forces?.members ?? [];
    if (member === undefined) throw new Error("no member");
    member.pressed.value += 1;
    expect(makeSet(altered)).toMatchObject({ ok: false, why: [expect.stringContaining("the assessment recorded is")] });
  });
});
