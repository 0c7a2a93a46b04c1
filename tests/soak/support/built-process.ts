import { spawn, type ChildProcess } from "node:child_process";
import path from "node:path";
import { freePort } from "../../lifecycle/support/free-port.ts";

const CLONE = path.resolve(import.meta.dirname, "../../..");
/** One for all processes on a database, so that each can sign heads of records and open what another sealed. */
const SECRETS_KEY = "5e".repeat(32);

/** One process of the built service, at a port that it keeps over restarts. */
export class BuiltProcess {
  readonly origin: string;
  readonly #entry: "server.js" | "worker.js";
  readonly #env: NodeJS.ProcessEnv;
  #child: ChildProcess | undefined;
  #output = "";
  #starting: Promise<void> = Promise.resolve();

  private constructor(entry: "server.js" | "worker.js", port: number, env: NodeJS.ProcessEnv) {
    this.#entry = entry;
    this.origin = `http://127.0.0.1:${port}`;
    const quiet = { LOG_LEVEL: "error", REQUESTS_PER_MINUTE: "1000000" };
    this.#env = { ...process.env, SECRETS_KEY, ...quiet, ...env, PORT: String(port) };
  }

  static async make(entry: "server.js" | "worker.js", env: NodeJS.ProcessEnv): Promise<BuiltProcess> {
    return new BuiltProcess(entry, await freePort(), env);
  }

  /** Kills it and begins to start it again; one that is still starting is waited for first, so that what is killed is at work. */
  async killAndRestart(): Promise<void> {
    await this.#starting;
    await this.kill();
    this.#starting = this.start();
  }

  /** Starts it, again and again while the database is away, and resolves once it listens. */
  async start(): Promise<void> {
    while (!(await this.#tryStart()));
  }

  /** Kills it at once; resolves when it is gone. */
  async kill(): Promise<void> {
    const child = this.#child;
    if (child === undefined || child.exitCode !== null || child.signalCode !== null) return;
    const gone = new Promise((resolve) => child.once("exit", resolve));
    child.kill("SIGKILL");
    await gone;
  }

  /** What it wrote last. */
  get lastWords(): string {
    return this.#output.slice(-2_000);
  }

  #tryStart(): Promise<boolean> {
    const file = path.join(CLONE, "apps/api/dist", this.#entry);
    const child = spawn(process.execPath, [file], { cwd: CLONE, env: this.#env, stdio: ["ignore", "pipe", "pipe"] });
    this.#child = child;
    this.#output = "";
    return new Promise((resolve) => {
      for (const stream of [child.stdout, child.stderr])
        stream.on("data", (part: Buffer) => {
          this.#output = (this.#output + part.toString()).slice(-20_000);
          if (/^listening /m.test(this.#output)) resolve(true);
        });
      child.once("exit", () => setTimeout(() => resolve(false), 200)); // the database may be away just then
    });
  }
}
