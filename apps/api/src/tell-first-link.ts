import type { FastifyInstance } from "fastify";
import { makeFirstLink } from "./services/first-link.ts";

/**
 * Where nobody is known yet, tells whoever started the service by which link the first administrator comes: over the
 * channel to the start, which prints it, or on the standard output. Never through the log.
 */
export async function tellFirstLink(app: FastifyInstance): Promise<void> {
  const path = await makeFirstLink(app.database);
  if (path === null) return;
  const firstLink = app.addressOf(path);
  if (process.send !== undefined) process.send({ firstLink });
  else process.stdout.write(`first administrator, once: ${firstLink}\n`);
}
