import { assess } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { judgedRemark, judgedSoFar } from "../../src/worker/judged-so-far.ts";
import type { LiveStrength } from "../../src/worker/use-strength.ts";
import { judgedAssessment, judgedProof, judgedScheme } from "../support/judged-unit.ts";
import { schemeOf, unitAt } from "../support/schemes.ts";

const path = assess(judgedScheme);
const live = (more: Partial<LiveStrength>): LiveStrength => ({
  ...{ judged: null, stands: false, progress: null, glance: null, workingOf: () => Promise.resolve(null) },
  forcesOf: () => Promise.resolve(null),
  ...more,
});
const judged = {
  ...{ answer: 1, scheme: judgedScheme, assessment: judgedAssessment, report: judgedProof.report, broke: null },
};
const moved = schemeOf([unitAt("g1", "G1", 500, 0, 0)]);

describe("judgedSoFar", () => {
  it("is the load path alone until strength answers, and says of nothing that it works", () => {
    const { assessment, marks, remark } = judgedSoFar(path, live({}), judgedScheme);
    expect(marks).toEqual(path.marks);
    expect(assessment?.verdict).toMatch(/not checked|does not work/);
    for (const { verdict } of assessment?.units ?? []) expect(verdict).not.toMatch(/^works/);
    expect(remark).toBe(`${path.questions} points of statics · strength waits`);
  });

  it("says how many sets of assumptions are solved", () => {
    expect(judgedSoFar(path, live({ progress: { done: 2, of: 6 } }), judgedScheme).remark).toMatch(/strength 2 of 6$/);
  });

  it("tells what a few vectors say as waiting, never as an answer", () => {
    const part = {
      id: "p",
      ownerId: "g1",
      element: "sill",
      place: "door",
      run: "1.4D",
      assumptions: "locks at play",
    } as const;
    const glance = { scheme: judgedScheme, parts: [{ ...part, utilisation: 0.834, held: [] }], vectors: 12 };
    const { remark, assessment } = judgedSoFar(path, live({ glance }), judgedScheme);
    expect(remark).toMatch(/strength waits; so far 0\.83 at most, on 12 load vectors$/);
    expect(assessment?.strength).toBeUndefined();
  });

  it("is the whole answer once it is of the very scheme shown", () => {
    const { assessment, waitingIds, remark } = judgedSoFar(path, live({ judged, stands: true }), judgedScheme);
    expect(assessment).toBe(judgedAssessment);
    expect(waitingIds.size).toBe(0);
    expect(remark).toBe(judgedRemark(judgedAssessment));
    expect(remark).toMatch(/\d+ points of statics · \d,\d{3} checks on \d+ load vectors/);
  });

  it("keeps what strength said before a move as waiting, never as an answer", () => {
    const { marks, waitingIds, assessment } = judgedSoFar(assess(moved), live({ judged }), moved);
    expect(waitingIds.size).toBeGreaterThan(0);
    for (const id of waitingIds) expect(marks.map((mark) => mark.id)).toContain(id);
    expect(assessment?.strength).toBeUndefined();
  });

  it("forgets what strength said of a thing that is gone", () => {
    const other = schemeOf([unitAt("g2", "G2", 0, 0, 0)]);
    expect(judgedSoFar(assess(other), live({ judged }), other).waitingIds.size).toBe(0);
  });
});
