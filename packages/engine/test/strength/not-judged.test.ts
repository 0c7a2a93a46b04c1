import { describe, expect, it } from "vitest";
import { defaultBasis } from "@cornerway/schema";
import { coverageOf, coverageTable } from "../../src/checks/coverage.ts";
import type { CheckedElement, LimitState } from "../../src/checks/limit-state.ts";
import { strength } from "../../src/strength.ts";
import { notRun } from "../../src/checks/not-run.ts";
import { notJudged } from "../../src/strength/not-judged.ts";
import { drawnUnit } from "./drawn-unit.ts";

const isNotRun = (limitState: LimitState, element: CheckedElement) => notRun[limitState]?.includes(element) === true;

describe("what strength does not judge", () => {
  it("lists as not run only what the coverage table has a check for", () => {
    const lines = coverageTable().filter(({ limitState, element }) => isNotRun(limitState, element));
    expect(lines.length).toBe(Object.values(notRun).flat().length);
    for (const { coverage, limitState, element } of lines)
      expect(["checked", "bounded"], `${limitState}, ${element}`).toContain(coverage);
  });

  it("names every limit state of the building as a whole that the table leaves out or no run checks", () => {
    const told = notJudged.join("; ");
    const left = coverageTable().filter(
      ({ limitState, element, coverage }) =>
        element === "building" && (coverage === "not covered" || isNotRun(limitState, element)),
    );
    expect(left.map(({ limitState }) => limitState).filter((limitState) => !told.includes(limitState))).toEqual([]);
    expect(left.length).toBeGreaterThan(0);
  });

  it("nothing that decides in a run is listed as not run", () => {
    const answer = strength({ ...drawnUnit({ type: "1CC" }), basis: defaultBasis });
    if (!answer.accepted) throw new Error("the sample is accepted");
    for (const { limitState, element, id } of answer.results) expect(isNotRun(limitState, element), id).toBe(false);
  });

  it("a weld that is not drawn is bounded, never checked", () => {
    expect(coverageOf("weld", "made connection").coverage).toBe("bounded");
  });
});
