import createClient from "openapi-fetch";
import type { z } from "zod";
import { csrfToken } from "../csrf-token.ts";
import { NoAnswer, problemOf, ServiceProblem, UnreadAnswer } from "../http.ts";
import type { paths } from "./schema.d.ts";

/** Every route of the service by its address, typed from the API description (`npm run api:types`). */
export const api = createClient<paths>({
  baseUrl: location.origin,
  credentials: "same-origin",
  headers: { accept: "application/json" },
  fetch: (request) => fetch(request),
});

api.use({
  onRequest: ({ request }) => {
    if (request.method !== "GET") request.headers.set("csrf-token", csrfToken.value);
  },
  onError: ({ request, error }) => (request.signal.aborted ? undefined : new NoAnswer(error)),
});

/** What a call of the client gives. */
type Called = Promise<{ data?: unknown; error?: unknown; response: Response }>;

/**
 * Reads the answer of a call by its shape. Throws ServiceProblem where the service refused, NoAnswer where none came,
 * UnreadAnswer where it has another shape.
 */
export async function read<T>(shape: z.ZodType<T>, call: Called): Promise<T> {
  return shaped(shape, answerOf(await call));
}

/** Reads a list that comes in pages, to its end; `ask` is given the last of the page before. */
export async function readPages<T>(shape: z.ZodType<T[]>, ask: (after: string | undefined) => Called): Promise<T[]> {
  const items: T[] = [];
  for (let after: string | undefined; ;) {
    const called = await ask(after);
    items.push(...shaped(shape, answerOf(called)));
    after = nextOf(called.response);
    if (after === undefined) return items;
  }
}

function answerOf({ data, error, response }: Awaited<Called>): unknown {
  if (!response.ok) throw new ServiceProblem(problemOf(error, response.status));
  return data;
}

function shaped<T>(shape: z.ZodType<T>, answer: unknown): T {
  const { data, error, success } = shape.safeParse(answer);
  if (!success) throw new UnreadAnswer(error);
  return data;
}

/** What the next page comes after: `Link` with rel="next", RFC 8288. */
function nextOf({ headers }: Response): string | undefined {
  const [, address] = /<([^>]+)>; rel="next"/.exec(headers.get("link") ?? "") ?? [];
  return address === undefined ? undefined : (new URL(address, location.origin).searchParams.get("after") ?? undefined);
}
