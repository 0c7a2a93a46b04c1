import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  answerKinds,
  lastAnswer,
  mayDo,
  questionOwedBy,
  questionState,
  questionStates,
  refuseQuestionStep,
  roles,
  type Author,
  type Question,
  type QuestionStep,
  type Role,
} from "../src/index.ts";

/** Five people of one role each, and a sixth who is owner and engineer, which one person may be. */
const people: readonly Author[] = [
  ...roles.map((role, at) => person(at, role)),
  ...(["owner", "engineer"] as const).map((role) => person(9, role)),
];

function person(at: number, role: Role): Author {
  return { id: `00000000-0000-4000-8000-00000000000${at}`, name: `Person ${at}`, role };
}

const digest = "a".repeat(64);
const stepKinds = ["answered", "information given", "closed", "reopened"] as const;

interface Move {
  by: Author;
  step: (typeof stepKinds)[number];
  kind: (typeof answerKinds)[number];
  standing: "stands" | "waits" | "stale";
}

const moves = fc.array(
  fc.record<Move>({
    by: fc.constantFrom(...people),
    step: fc.constantFrom(...stepKinds),
    kind: fc.constantFrom(...answerKinds),
    standing: fc.constantFrom("stands", "waits", "stale"),
  }),
  { minLength: 20, maxLength: 80 },
);
const askers = fc.constantFrom(...people.filter(({ role }) => mayDo["ask-question"].includes(role)));

const stepOf = ({ by, step, kind }: Move): QuestionStep => {
  const done = { id: "00000000-0000-4000-8000-0000000000aa", by, at: "2026-01-01T00:00:00.000Z" };
  const bound = { revision: "A", contentDigest: digest, resultDigest: digest };
  if (step === "closed") return { step, ...done };
  if (step !== "answered") return { step, ...done, text: "Words." };
  if (kind === "as drawn") return { step, ...done, ...bound, answer: { kind, text: null } };
  if (kind === "need information") return { step, ...done, ...bound, answer: { kind, text: "How thick?" } };
  if (kind === "no, but these options")
    return { step, ...done, ...bound, answer: { kind, text: "No.", options: ["A post."] } };
  return { step, ...done, ...bound, answer: { kind, text: null, conditions: [] } };
};

const asked = (author: Author): Question => ({
  ...{ id: "00000000-0000-4000-8000-0000000000bb", number: 1, elementId: "g1", view: "plan", revision: "A" },
  ...{ wanted: "May it move?", mayGive: null, neededBy: "2026-02-01", author, askedAt: "2026-01-01T00:00:00.000Z" },
  steps: [],
});

/** Every step that is let through, with the question before and after it. */
function walk(author: Author, tried: readonly Move[]) {
  let question = asked(author);
  const taken: { move: Move; before: Question; after: Question }[] = [];
  for (const move of tried) {
    const state = questionState(question, lastAnswer(question) === undefined ? null : move.standing);
    if (refuseQuestionStep(question, state, move.step, move.by) !== undefined) continue;
    const before = question;
    question = { ...question, steps: [...question.steps, stepOf(move)] };
    taken.push({ move, before, after: question });
  }
  return { question, taken };
}

describe("a question", () => {
  it("is answered by nobody but an engineer, whatever anyone tries in whatever order", () => {
    fc.assert(
      fc.property(askers, moves, (author, tried) => {
        const { question, taken } = walk(author, tried);
        for (const { move } of taken) if (move.step === "answered") expect(move.by.role).toBe("engineer");
        const state = questionState(question, "stands");
        if (state !== "asked") expect(lastAnswer(question)?.by.role).toBe("engineer");
      }),
      { numRuns: 500 },
    );
  });

  it("is never closed by whoever gave its answer, nor by another role than the one that asked", () => {
    let closings = 0;
    fc.assert(
      fc.property(askers, moves, (author, tried) => {
        for (const { move, before } of walk(author, tried).taken) {
          if (move.step !== "closed") continue;
          closings += 1;
          expect(move.by.role).toBe(author.role);
          expect(move.by.id).not.toBe(lastAnswer(before)?.by.id);
        }
      }),
      { numRuns: 500 },
    );
    expect(closings).toBeGreaterThan(20);
  });

  it("is closed only over an answer that is not stale, and a closed one goes stale like any other", () => {
    fc.assert(
      fc.property(askers, moves, (author, tried) => {
        for (const { move, after } of walk(author, tried).taken) {
          if (move.step !== "closed") continue;
          expect(move.standing).not.toBe("stale");
          expect(questionState(after, "stale")).toBe("stale");
          expect(questionOwedBy(after, "stale")).toBe("engineer");
        }
      }),
      { numRuns: 500 },
    );
  });

  it("always has someone who can take the next step, and that is the role that owes it unless it is closed", () => {
    fc.assert(
      fc.property(askers, moves, fc.constantFrom("stands", "waits", "stale"), (author, tried, standing) => {
        const { question } = walk(author, tried);
        const state = questionState(question, lastAnswer(question) === undefined ? null : standing);
        const owes = questionOwedBy(question, state);
        const can = stepKinds.flatMap((step) =>
          people.filter((by) => refuseQuestionStep(question, state, step, by) === undefined).map(({ role }) => role),
        );
        if (owes === null) expect(state).toBe("closed");
        else expect(can).toContain(owes);
      }),
    );
  });

  it.each(questionStates)("in state %s says so in every refusal", (state) => {
    const engineer = person(1, "engineer");
    const refused = refuseQuestionStep(
      asked(person(0, "architect")),
      state,
      "information given",
      person(0, "architect"),
    );
    expect(refused?.detail ?? "").toBe(state === "needs information" ? "" : `the question is ${state}`);
    expect(refuseQuestionStep(asked(person(0, "architect")), state, "closed", engineer)?.code).toBe("closer-refused");
  });
});
