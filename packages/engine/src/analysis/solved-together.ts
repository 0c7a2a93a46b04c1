import type { Prepared } from "./prepared.ts";
import type { PressureSum, Responses } from "./responses.ts";
import { solveMovements, type LoadVector, type Movement } from "./solve-movement.ts";

/** A solution asked for on the way, and a movement near it to begin from. */
export interface Solution {
  readonly prepared: Prepared;
  readonly load: LoadVector;
  readonly near: Float64Array | null;
}

/** Pressures asked for on the way. */
interface Pressures {
  readonly responses: Responses;
  readonly sum: PressureSum;
}

type Question = Solution | Pressures;
/** Of pressures the movement behind them where it was met on the way, else null. */
type Answer = Movement | Float64Array | null;

/** A computation that stops at every answer it needs. */
export type Course<T> = Generator<Question, T, Answer>;

export function* solutionOf(question: Solution): Course<Movement> {
  const answer = yield question;
  return answer === null || answer instanceof Float64Array ? missing() : answer;
}

/** Adds up the pressures; returns the movement behind what is added where it was met on the way. */
export function* addedPressures(responses: Responses, sum: PressureSum): Course<Float64Array | null> {
  const answer = responses.sideBySide ? yield { responses, sum } : responses.addPressures([sum])[0];
  return answer === null || answer instanceof Float64Array ? answer : missing();
}

/** Follows all courses to their ends; questions about one prepared system, or to one's responses, are answered together. */
export function solvedTogether<T>(courses: readonly Course<T>[]): T[] {
  const ends: T[] = [];
  let steps = courses.map((course, n) => ({ n, course, step: course.next(null) }));
  for (;;) {
    const asking = new Map<Prepared | Responses, { n: number; course: Course<T>; question: Question }[]>();
    for (const { n, course, step } of steps) {
      if (step.done) {
        ends[n] = step.value;
        continue;
      }
      const question = step.value;
      const asked = "sum" in question ? question.responses : question.prepared;
      const group = asking.get(asked);
      if (group === undefined) asking.set(asked, [{ n, course, question }]);
      else group.push({ n, course, question });
    }
    if (asking.size === 0) return ends;
    steps = [...asking.values()].flatMap((group) => {
      const answers = answersTo(group.map(({ question }) => question));
      return group.map(({ n, course }, k) => ({ n, course, step: course.next(answers[k] ?? null) }));
    });
  }
}

/** Of one kind, to one prepared system or one's responses. */
function answersTo(questions: readonly Question[]): Answer[] {
  const solutions: Solution[] = [];
  const pressures: Pressures[] = [];
  for (const question of questions) {
    if ("sum" in question) pressures.push(question);
    else solutions.push(question);
  }
  const [first] = solutions;
  if (first !== undefined)
    return solveMovements(
      first.prepared,
      solutions.map(({ load }) => load),
      solutions.map(({ near }) => near),
    );
  return pressures[0]?.responses.addPressures(pressures.map(({ sum }) => sum)) ?? [];
}

function missing(): never {
  throw new Error("each question has its answer");
}
