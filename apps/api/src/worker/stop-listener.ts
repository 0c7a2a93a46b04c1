import type { FastifyBaseLogger } from "fastify";
import postgres from "postgres";
import { stopChannel } from "../store/assessment-rows.ts";

/** Hears which runs are to be stopped; `heardAgain` says that notices may have been missed. */
export async function listenForStops(
  url: string,
  { stop, heardAgain, log }: { stop: (key: string) => void; heardAgain: () => void; log: FastifyBaseLogger },
): Promise<{ close(): Promise<void> }> {
  const sql = postgres(url, { max: 1, connect_timeout: 5, fetch_types: false, onnotice: () => undefined });
  await sql.listen(stopChannel, stop, heardAgain).catch(async (error: unknown) => {
    log.warn({ err: error }, "nothing is heard of runs to stop; they end by themselves");
  });
  return { close: () => sql.end({ timeout: 1 }) };
}
