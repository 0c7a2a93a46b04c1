import { describe, expect, it } from "vitest";
import { coverageOf, coverageRows, coverageTable, effectOnVerdict } from "../../src/checks/coverage.ts";
import { checkedElements, limitStates } from "../../src/checks/limit-state.ts";

describe("coverage", () => {
  it("has one line for each limit state of each element, each with an effect on the verdict", () => {
    const table = coverageTable();
    expect(table).toHaveLength(limitStates.length * checkedElements.length);
    expect(new Set(table.map(({ limitState, element }) => `${limitState}|${element}`)).size).toBe(table.length);
    for (const { coverage } of table) expect(effectOnVerdict[coverage].length).toBeGreaterThan(0);
  });

  it("has exactly the rows of the union of limit states", () => {
    expect(Object.keys(coverageRows).toSorted()).toEqual([...limitStates].toSorted());
  });

  it("puts no element under two coverages of one limit state", () => {
    for (const [name, row] of Object.entries(coverageRows)) {
      const all = [...(row.checked ?? []), ...(row.bounded ?? []), ...(row.notCovered ?? [])];
      expect(new Set(all).size, name).toBe(all.length);
    }
  });

  it("says why wherever it bounds or leaves out", () => {
    for (const line of coverageTable().filter(({ coverage }) => coverage === "bounded" || coverage === "not covered"))
      expect(line.why, `${line.limitState}, ${line.element}`).toBeDefined();
  });

  it("meets every element and every limit state at least once", () => {
    const met = coverageTable().filter(({ coverage }) => coverage !== "does not arise");
    expect(new Set(met.map(({ element }) => element))).toEqual(new Set(checkedElements));
    expect(new Set(met.map(({ limitState }) => limitState))).toEqual(new Set(limitStates));
  });

  it("a seat on a roof sheet needs the engineer wherever it acts", () => {
    expect(effectOnVerdict[coverageOf("sheet crushing under a seat", "roof sheet").coverage]).toBe(
      "needs the engineer where it acts",
    );
  });

  it("says of every line whether a run makes the check: never where it is not covered or does not arise", () => {
    const lines = coverageTable();
    for (const { run, coverage } of lines) if (run) expect(["checked", "bounded"]).toContain(coverage);
    expect(coverageOf("weld", "added post").run).toBe(false);
    expect(coverageOf("compression", "jamb").run).toBe(true);
    expect(lines.filter(({ run }) => run).length).toBeGreaterThan(60);
  });
});
