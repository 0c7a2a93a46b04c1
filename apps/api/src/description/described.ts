import type { ProblemCode } from "@cornerway/schema";
import type { z } from "zod";

/** The chapters of the reference, in its order. */
export const tags = {
  "signing in": "Who is there: sessions and access tokens.",
  account: "What belongs to one person.",
  projects: "Projects and who has a part in them.",
  draft: "The working copy and what is drawn on it.",
  revisions: "Immutable lettered snapshots with the server's own assessment.",
  prices: "The cost book, premiums, the owner's decisions, and alternatives side by side.",
  review: "Notes, change requests and stamps.",
  "permit sets": "The printed set of a revision, and the comments of the authority it answers.",
  "survey and site": "The containers offered for the building, and what is built of it.",
  record: "The append-only account of a project.",
  webhooks: "Word of a project's record to other services.",
  watching: "For balancers and supervisors.",
} as const;

export interface Description {
  tag: keyof typeof tags;
  /** Names the operation in clients made from the document; given once. */
  id: string;
  summary: string;
  description?: string;
  /** What is answered when it is done, by status; null where there is no body. */
  answers: Record<number, z.ZodType | null>;
  /** Media types the answers come in, `application/json` unless said. */
  mediaType?: string | readonly string[];
  /** Headers of the answers, by name, with what they say. */
  headers?: Record<string, string>;
  /** Problems of this route alone; those that follow from its kind are added by themselves. */
  problems?: readonly ProblemCode[];
}

declare module "fastify" {
  interface FastifySchema {
    /** What the API description says of a route beyond its parts; read when the document is made. */
    told?: Description;
  }
}

const done: Record<number, string> = {
  101: "The socket is open.",
  200: "Done.",
  201: "Made.",
  202: "Taken; the rest follows.",
  204: "Done, nothing to tell.",
  304: "As it was under that tag.",
};

export const statusWords = (status: number): string => done[status] ?? "Done.";

/** The schema of a route with all that the API description says of it: what is told, then the parts of the request. */
export function described<Parts extends object>(told: Description, parts: Parts) {
  const { tag, id, summary, description, answers, mediaType = "application/json" } = told;
  const response: Record<string, unknown> = {};
  for (const [status, schema] of Object.entries(answers))
    if (schema !== null)
      response[status] = {
        description: statusWords(Number(status)),
        content: Object.fromEntries([mediaType].flat().map((type) => [type, { schema }])),
      };
  const words = { tags: [tag], operationId: id, summary, ...(description === undefined ? {} : { description }) };
  return { ...parts, ...words, told, response };
}
