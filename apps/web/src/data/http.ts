import { Problem } from "@cornerway/schema";
import type { ProblemCode } from "@cornerway/schema";

/** The service answered, and said no: RFC 9457 details. */
export class ServiceProblem extends Error {
  readonly problem: Problem;
  constructor(problem: Problem) {
    super(problem.detail ?? problem.title);
    this.name = "ServiceProblem";
    this.problem = problem;
  }
}

/** No answer came: the line to the office is down. */
export class NoAnswer extends Error {
  constructor(cause: unknown) {
    super("The line to the office is down.", { cause });
    this.name = "NoAnswer";
  }
}

/** An answer came that this page cannot read: page and service are of different versions. */
export class UnreadAnswer extends Error {
  constructor(cause: unknown) {
    super("The office answered in a way this page does not know.", { cause });
    this.name = "UnreadAnswer";
  }
}

/** True when the same request may be answered later: nobody answered, or the service has no hand free just now. */
export const mayPass = (error: unknown): boolean =>
  error instanceof NoAnswer || isProblem(error, "unready") || isProblem(error, "too-many-tries");

/** True when the service refused with this code. */
export const isProblem = (error: unknown, code: ProblemCode): error is ServiceProblem =>
  error instanceof ServiceProblem && error.problem.code === code;

/** What a refusal says; of a refusal that is no problem, that it is one this page does not know. */
export function problemOf(body: unknown, status: number): Problem {
  const parsed = Problem.safeParse(body);
  if (parsed.success) return parsed.data;
  return {
    type: "about:blank",
    title: "The office answered in a way this page does not know.",
    status,
    code: "internal",
  };
}
