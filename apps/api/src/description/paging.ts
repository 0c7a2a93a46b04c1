import type { FastifyReply, FastifyRequest } from "fastify";
import { z } from "zod";
import { sendProblem } from "../plugins/problems.ts";
import type { Page } from "../services/page.ts";

export const mostOfAPage = 500;
const usualOfAPage = "200";

/** Numbers in an address are plain decimal figures. */
export const figures = z.string().regex(/^[0-9]{1,10}$/, "a whole number in figures");

/** What PostgreSQL's integer holds: a number beyond it stands for nothing here. */
const highestNumber = 2_147_483_647;

/** The number after which a list goes on. */
export const afterNumber = figures.default("0").transform(Number).pipe(z.int().max(highestNumber));

export const limit = figures
  .default(usualOfAPage)
  .transform(Number)
  .pipe(z.int().min(1).max(mostOfAPage))
  .describe(`How many at most, up to ${mostOfAPage}.`);

/** The query of a list that comes in pages: those after the one named. */
export const pageQuery = <T extends z.ZodType>(key: T) =>
  z.strictObject({ limit, after: key.optional().describe("The last one of the page before.") });

export const pageHeaders = {
  link: 'Where the next page is, as `<address>; rel="next"` (RFC 8288); absent on the last.',
};

/** Answers with a page and the way to the next; null is a page after something that is not there. */
export function sendPage<T>(request: FastifyRequest, reply: FastifyReply, page: Page<T> | null): FastifyReply {
  if (page === null) {
    const detail = "there is no such one to come after";
    return sendProblem(reply, { code: "body-invalid", detail, fields: [{ pointer: "/querystring/after", detail }] });
  }
  linkNext(request, reply, page);
  return reply.send(page.items);
}

export function linkNext(request: FastifyRequest, reply: FastifyReply, { next }: Page<unknown>): void {
  if (next === null) return;
  const [path = "", query] = request.url.split("?", 2);
  const asked = new URLSearchParams(query);
  asked.set("after", next);
  reply.header("link", `<${path}?${asked.toString()}>; rel="next"`);
}
