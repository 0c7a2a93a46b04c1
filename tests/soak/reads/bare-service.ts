import { fork } from "node:child_process";
import path from "node:path";

/** The bare routes in a process of their own, as the service is. */
export async function bareService(
  databaseUrl: string,
  projectId: string,
): Promise<{ origin: string; close(): Promise<void> }> {
  const child = fork(path.join(import.meta.dirname, "bare-routes.mjs"), [], {
    env: { ...process.env, DATABASE_URL: databaseUrl, PROJECT: projectId },
    execArgv: [],
  });
  const port = await new Promise<number>((told) => child.once("message", (message) => told(Number(message))));
  const close = async () => {
    const gone = new Promise((resolve) => child.once("exit", resolve));
    child.kill("SIGKILL");
    await gone;
  };
  return { origin: `http://127.0.0.1:${port}`, close };
}
