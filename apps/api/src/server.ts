import { buildApp } from "./app.ts";
import { readConfig } from "./config.ts";

const config = readConfig(process.env);
const app = await buildApp(config);

for (const signal of ["SIGTERM", "SIGINT"] as const) process.once(signal, () => void stop(signal));

const address = await app.listen({ host: config.host, port: config.port });
process.stdout.write(`listening ${address}\n`);

/** Takes no more requests, finishes those in flight, closes the sockets, and leaves. */
async function stop(signal: string): Promise<void> {
  app.log.info({ signal }, "stopping");
  try {
    await app.close();
    process.exitCode = 0;
  } catch (error) {
    app.log.error(error, "could not stop in order");
    process.exitCode = 1;
  }
}
