import { Problem } from "@cornerway/schema";
import type { ProblemCode } from "@cornerway/schema";
import type { z } from "zod";
import { csrfToken } from "./csrf-token.ts";

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

interface Ask {
  method?: "GET" | "POST" | "DELETE";
  body?: unknown;
  signal?: AbortSignal;
}

/** Asks the service for `path` and reads the answer by `shape`. Throws ServiceProblem or NoAnswer. */
export async function http<T>(shape: z.ZodType<T>, path: string, ask: Ask = {}): Promise<T> {
  const response = await send(path, ask);
  const body: unknown = response.status === 204 ? undefined : await response.json().catch(() => undefined);
  if (!response.ok) throw new ServiceProblem(readProblem(body, response.status));
  return shape.parse(body);
}

/** True when the same request may be answered later: nobody answered, or the service has no hand free just now. */
export const mayPass = (error: unknown): boolean =>
  error instanceof NoAnswer || isProblem(error, "unready") || isProblem(error, "too-many-tries");

/** True when the service refused with this code. */
export const isProblem = (error: unknown, code: ProblemCode): error is ServiceProblem =>
  error instanceof ServiceProblem && error.problem.code === code;

async function send(path: string, { method = "GET", body, signal }: Ask): Promise<Response> {
  const headers: Record<string, string> = { accept: "application/json" };
  if (method !== "GET") headers["csrf-token"] = csrfToken.value;
  if (body !== undefined) headers["content-type"] = "application/json";
  try {
    return await fetch(path, {
      method,
      headers,
      credentials: "same-origin",
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      ...(signal === undefined ? {} : { signal }),
    });
  } catch (cause) {
    if (signal?.aborted) throw cause;
    throw new NoAnswer(cause);
  }
}

function readProblem(body: unknown, status: number): Problem {
  const parsed = Problem.safeParse(body);
  if (parsed.success) return parsed.data;
  return {
    type: "about:blank",
    title: "The office answered in a way this page does not know.",
    status,
    code: "internal",
  };
}
