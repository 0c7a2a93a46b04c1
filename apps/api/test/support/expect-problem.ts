import { Problem, problems, type ProblemCode } from "@cornerway/schema";
import type { Response } from "supertest";
import { expect } from "vitest";

/** The answer is this problem of the catalogue, in the form of RFC 9457; returns it. */
export function expectProblem(response: Response, code: ProblemCode): Problem {
  expect(response.headers["content-type"]).toMatch(/^application\/problem\+json(; charset=utf-8)?$/);
  const problem = Problem.parse(JSON.parse(response.text));
  expect({ code: problem.code, http: response.status }).toEqual({ code, http: problems[code].status });
  expect(problem).toMatchObject({ status: problems[code].status, title: problems[code].title });
  return problem;
}
