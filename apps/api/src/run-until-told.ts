import type { FastifyInstance } from "fastify";

/** Listens, says where, and at SIGTERM or SIGINT takes no more, finishes what is in flight, and leaves. */
export async function runUntilTold(
  app: FastifyInstance,
  { host, port }: { host: string; port: number },
): Promise<void> {
  for (const signal of ["SIGTERM", "SIGINT"] as const) process.once(signal, () => void stop(app, signal));
  const address = await app.listen({ host, port });
  process.stdout.write(`listening ${address}\n`);
}

async function stop(app: FastifyInstance, signal: string): Promise<void> {
  app.log.info({ signal }, "stopping");
  try {
    await app.close();
    process.exitCode = 0;
  } catch (error) {
    app.log.error(error, "could not stop in order");
    process.exitCode = 1;
  }
}
