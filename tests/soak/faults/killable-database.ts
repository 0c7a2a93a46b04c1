import { readdirSync, readFileSync } from "node:fs";
import net from "node:net";
import path from "node:path";
import { startPostgres, type RunningPostgres } from "../../../apps/api/src/database/index.ts";
import { ownDatabase } from "../support/own-database.ts";

/** A PostgreSQL that waits for the disk, behind a way whose address stays while it is killed and started again. */
export class KillableDatabase {
  readonly ownerUrl: string;
  readonly serviceUrl: string;
  readonly #folder: string;
  readonly #way: net.Server;
  readonly #sockets = new Set<net.Socket>();
  #running: RunningPostgres;

  private constructor(folder: string, running: RunningPostgres, way: net.Server, port: number) {
    this.#folder = folder;
    this.#running = running;
    this.#way = way;
    this.ownerUrl = through(running.ownerUrl, port);
    this.serviceUrl = through(running.serviceUrl, port);
    way.on("connection", (near) => this.#pass(near));
  }

  static async open(): Promise<KillableDatabase> {
    const { folder, ...running } = await ownDatabase(true);
    const way = net.createServer();
    await new Promise<void>((listening) => way.listen(0, "127.0.0.1", listening));
    const address = way.address();
    if (address === null || typeof address === "string") throw new Error("the way to the database has no port");
    return new KillableDatabase(folder, running, way, address.port);
  }

  /** Kills the server without warning and starts it again on what it left. */
  async killAndRestart(): Promise<void> {
    process.kill(this.#pid(), "SIGKILL");
    await this.#running.ended;
    await this.#running.stop(); // lets its guard go
    for (const socket of this.#sockets) socket.destroy();
    this.#running = await startPostgres({ dataFolder: this.#folder });
  }

  async close(): Promise<void> {
    this.#way.close();
    for (const socket of this.#sockets) socket.destroy();
    await this.#running.stop();
  }

  #pid(): number {
    const found = readdirSync(this.#folder, { recursive: true, encoding: "utf8" }).find((name) =>
      name.endsWith("postmaster.pid"),
    );
    if (found === undefined) throw new Error("the database has no pid file");
    return Number(readFileSync(path.join(this.#folder, found), "utf8").split("\n")[0]);
  }

  #pass(near: net.Socket): void {
    const far = net.connect(Number(new URL(this.#running.ownerUrl).port), "127.0.0.1");
    for (const socket of [near, far]) {
      this.#sockets.add(socket);
      socket.on("error", () => undefined); // the other end learns by the close below
      socket.on("close", () => {
        this.#sockets.delete(socket);
        for (const end of [near, far]) end.destroy();
      });
    }
    near.pipe(far).pipe(near);
  }
}

function through(url: string, port: number): string {
  const parts = new URL(url);
  parts.host = `127.0.0.1:${port}`;
  return parts.href;
}
