import { StrengthProof, type Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { assessStrength } from "../../src/assess-strength.ts";
import { coverageTable } from "../../src/checks/coverage.ts";
import { notRun } from "../../src/checks/not-run.ts";
import { ordinarySchemes } from "../strength/ordinary-schemes/ordinary-schemes.ts";

const proofOf = (scheme: Scheme | undefined): StrengthProof => {
  const answer = scheme === undefined ? undefined : assessStrength(scheme);
  if (answer?.accepted !== true) throw new Error("the sample is accepted");
  return answer.proof;
};

describe("strengthProof of one 20 ft unit", () => {
  const { report, workings } = proofOf(ordinarySchemes["one 20 ft"]);
  const ids = new Set(workings.map(({ id }) => id));

  it("is plain data of its schema", () => {
    const read = StrengthProof.safeParse(JSON.parse(JSON.stringify({ report, workings })));
    expect(read.error?.issues).toBeUndefined();
  });

  it("names every part once, refused ones first, then the fullest", () => {
    const uses = report.results.map(({ utilisation }) => utilisation ?? Infinity);
    expect(uses).toEqual(uses.toSorted((a, b) => b - a));
    expect(new Set(report.results.map(({ id }) => id)).size).toBe(report.results.length);
  });

  it("keeps the working of every governing check and every load under its own name", () => {
    for (const { id, utilisation, clause } of report.results) {
      expect(ids.has(id), id).toBe(utilisation !== null);
      expect(clause !== undefined, id).toBe(utilisation !== null);
    }
    for (const { id } of report.loads) expect(ids.has(id), id).toBe(true);
    expect(ids.size).toBe(workings.length);
  });

  it("says the result of a working as its row does", () => {
    for (const { id, utilisation } of report.results) {
      const working = workings.find((kept) => kept.id === id)?.working;
      expect(Math.abs((working?.utilisation ?? NaN) - (utilisation ?? NaN)), id).toBeLessThan(1e-3);
    }
  });

  it("derives dead, imposed, roof, snow, wind and earthquake loads, each with its clause", () => {
    expect(new Set(report.loads.map(({ group }) => group))).toEqual(
      new Set(["dead", "imposed", "roof", "snow", "wind", "earthquake"]),
    );
    for (const { clause, title } of report.loads) expect(clause.document, title).not.toBe("");
  });

  it("lists combinations of both levels with the vectors they were tried by", () => {
    expect(report.combinations.map(({ text, level }) => `${level} ${text}`)).toContain("strength 1.4D");
    expect(report.combinations.some(({ level }) => level === "allowable")).toBe(true);
    for (const { runs } of report.combinations) expect(runs).toBeGreaterThan(0);
  });

  it("sums the forces of each case: dead load goes down by its derivation, wind along x goes along x", () => {
    const [dead] = report.loads.filter(({ group, title }) => group === "dead" && title.endsWith("most"));
    const total = report.cases.find(({ id }) => id === "D most");
    expect(total?.zKn).toBeCloseTo(-(dead?.value ?? NaN) / 1000, 2);
    expect(total?.xKn).toBeCloseTo(0, 3);
    const wind = report.cases.find(({ symbol, xKn }) => symbol === "W" && Math.abs(xKn) > 1);
    expect(wind).toBeDefined();
  });

  it("prints coverage with what is not run, and that no verdict answers for it", () => {
    const arising = coverageTable().filter(({ coverage }) => coverage !== "does not arise");
    expect(report.coverage).toHaveLength(arising.length);
    const left = report.coverage.filter(({ run }) => !run);
    for (const [check, parts] of Object.entries(notRun))
      for (const part of parts)
        expect(left.find((row) => row.check === check && row.part === part)?.effect).toMatch(/no verdict|needs the/);
  });
});

describe("strengthProof of a scheme that does not stand", () => {
  it("tells runs without equilibrium together, with what moves and how many", () => {
    const { report } = proofOf(ordinarySchemes["an overhang of 1 m"]);
    for (const { words, runs, first } of report.withoutEquilibrium) {
      expect(words).not.toBe("");
      expect(first).not.toBe("");
      expect(runs).toBeGreaterThan(0);
    }
    const keys = report.withoutEquilibrium.map(({ assumptions, words, held }) => [assumptions, words, held].join("|"));
    expect(new Set(keys).size).toBe(keys.length);
  });
});
