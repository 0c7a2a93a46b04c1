import { assess, impact, type Impact } from "@cornerway/engine";
import type { JudgementKind, JudgementOf, Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { impactSentence, stoodOnSentence } from "../../src/wording/impact-sentence.ts";
import { schemeOf, unitAt } from "../support/schemes.ts";

const drawn = (scheme: Scheme) => ({ scheme, result: assess(scheme) });
const stack = schemeOf([unitAt("g1", "G1", 0, 0, 0), unitAt("f1", "F1", 0, 0, 2896)]);
const nothing: Impact = impact(drawn(stack), drawn(stack), []);
const nameOf = (id: string) => id.toUpperCase();
const given = (kind: JudgementKind, of: Partial<JudgementOf> = {}): JudgementOf => ({
  ...{ kind, id: "x", number: 3, revision: "C", elementId: null },
  ...of,
});
const says = (stale: readonly JudgementOf[]) => impactSentence({ ...nothing, stale }, nameOf);

describe("what an edit would undo, in one line", () => {
  it("is nothing where it undoes nothing", () => {
    expect(impactSentence(nothing, nameOf)).toBeNull();
  });

  it("names posts that lose load or ground, then what goes stale", () => {
    const supports = [
      { id: "p1", loses: "its load" },
      { id: "p2", loses: "its ground" },
    ] as const;
    const stale = [given("answer", { elementId: "f1" }), given("stamp", { elementId: "g1" })];
    expect(impactSentence({ ...nothing, supports, stale }, nameOf)).toBe(
      "P1 loses its load and P2 loses its ground; the answer on F1 and the stamp on G1 go stale.",
    );
  });

  it("names a unit that falls, as the engine finds it: pushed off its bearings", () => {
    const pushed = schemeOf([unitAt("g1", "G1", 0, 0, 0), unitAt("f1", "F1", 9000, 0, 2896)]);
    expect(impactSentence(impact(drawn(stack), drawn(pushed), []), nameOf)).toMatch(/F1 does not work/);
  });

  it("has words for every kind of judgement", () => {
    expect(says([given("stamp")])).toBe("The stamp on revision C goes stale.");
    expect(says([given("check")])).toBe("The check on revision C goes stale.");
    expect(says([given("issue for seal")])).toBe("The issue for seal on revision C goes stale.");
    expect(says([given("decision")])).toBe("The owner’s decision on revision C goes stale.");
    expect(says([given("disposition", { elementId: "f1" })])).toBe("The engineer’s disposition on F1 goes stale.");
    expect(says([given("confirmation")])).toBe("Confirmation 3 of values goes stale.");
    expect(says([given("request taken in")])).toBe("Request 3 that was taken in goes stale.");
  });

  it("stays one line: three by name, the others by number", () => {
    const many = ["a1", "a2", "a3", "a4", "a5"].map((elementId) => given("stamp", { elementId }));
    expect(says(many)).toBe("The stamp on A1, the stamp on A2, the stamp on A3 and 2 others go stale.");
  });

  it("says who stands on what would go", () => {
    expect(stoodOnSentence(["t10", "t2"], "it", nameOf)).toBe("T2 and T10 stand on it.");
    expect(stoodOnSentence(["t1"], "it", nameOf)).toBe("T1 stands on it.");
    expect(stoodOnSentence([], "it", nameOf)).toBeNull();
  });
});
