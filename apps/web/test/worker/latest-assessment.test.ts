import type { Scheme } from "@cornerway/schema";
import { assess } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { LatestAssessment } from "../../src/worker/latest-assessment.ts";
import type { Assessed } from "../../src/worker/latest-assessment.ts";
import type { AssessAnswer, AssessQuestion } from "../../src/worker/messages.ts";
import { schemeOf, unitAt } from "../support/schemes.ts";

const at = (xMm: number): Scheme => schemeOf([unitAt("g1", "G1", xMm, 0, 0)]);

function line() {
  const asked: AssessQuestion[] = [];
  let hear: (answer: AssessAnswer) => void = () => undefined;
  return {
    asked,
    post: (question: AssessQuestion) => void asked.push(question),
    listen: (listener: (answer: AssessAnswer) => void) => void (hear = listener),
    answer: (turn: number) => {
      const question = asked.find((each) => each.turn === turn);
      if (question !== undefined) hear({ turn, assessment: assess(question.scheme), premium: null });
    },
    breakOn: (turn: number) => hear({ turn, broke: "a solid has no volume" }),
  };
}

describe("LatestAssessment asks about the latest scheme only", () => {
  it("while an answer is awaited, newer schemes replace each other", () => {
    const engine = line();
    const told: Assessed[] = [];
    const latest = new LatestAssessment(engine, (assessed) => told.push(assessed));
    const schemes = [at(0), at(10), at(20), at(30)];
    for (const scheme of schemes) latest.ask(scheme);
    expect(engine.asked.map(({ scheme }) => scheme)).toEqual([schemes[0]]);
    engine.answer(1);
    engine.answer(2);
    expect(engine.asked.map(({ scheme }) => scheme)).toEqual([schemes[0], schemes[3]]);
    expect(told.map(({ scheme }) => scheme)).toEqual([schemes[0], schemes[3]]);
  });

  it("when the engine breaks nothing is checked, and the next scheme is asked about all the same", () => {
    const engine = line();
    const told: Assessed[] = [];
    const latest = new LatestAssessment(engine, (assessed) => told.push(assessed));
    latest.ask(at(0));
    latest.ask(at(10));
    engine.breakOn(1);
    engine.answer(2);
    expect(told).toMatchObject([
      { assessment: null, broke: "a solid has no volume" },
      { assessment: { scope: "load path only, no strength checked" }, broke: null },
    ]);
  });

  it("an answer to an earlier turn is not taken for this one", () => {
    const engine = line();
    const told: Assessed[] = [];
    const latest = new LatestAssessment(engine, (assessed) => told.push(assessed));
    latest.ask(at(0));
    engine.answer(1);
    latest.ask(at(10));
    engine.answer(1);
    expect(told).toHaveLength(1);
  });
});
