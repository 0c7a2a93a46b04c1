import type { Prepared } from "./prepared.ts";
import { solveMovements, type LoadVector, type Movement } from "./solve-movement.ts";

/** A solution asked for on the way, and a movement near it to begin from. */
export interface Question {
  readonly prepared: Prepared;
  readonly load: LoadVector;
  readonly near: Float64Array | null;
}

/** A computation that stops at every solution it needs. */
export type Course<T> = Generator<Question, T, Movement>;

/** Follows all courses to their ends; questions about one prepared system are answered together. */
export function solvedTogether<T>(courses: readonly Course<T>[]): T[] {
  const ends: T[] = [];
  let steps = courses.map((course, n) => ({ n, course, step: course.next() }));
  for (;;) {
    const asking = new Map<Prepared, { n: number; course: Course<T>; question: Question }[]>();
    for (const { n, course, step } of steps) {
      if (step.done) {
        ends[n] = step.value;
        continue;
      }
      const group = asking.get(step.value.prepared);
      const one = { n, course, question: step.value };
      if (group === undefined) asking.set(step.value.prepared, [one]);
      else group.push(one);
    }
    if (asking.size === 0) return ends;
    steps = [...asking].flatMap(([prepared, group]) => {
      const questions = group.map(({ question }) => question);
      const answers = solveMovements(
        prepared,
        questions.map(({ load }) => load),
        questions.map(({ near }) => near),
      );
      return group.map(({ n, course }, k) => ({ n, course, step: course.next(answers[k] ?? missing()) }));
    });
  }
}

function missing(): never {
  throw new Error("each question has its answer");
}
