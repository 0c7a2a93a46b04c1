import { chmodSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { Account, OpenedLink } from "@cornerway/schema";
import { afterEach, beforeEach, expect, it } from "vitest";
import { startPostgres, type RunningPostgres } from "../../apps/api/src/database/index.ts";
import { withClient } from "../../apps/api/src/database/with-client.ts";
import { createDatabase, renamedDatabase } from "../support/create-database.ts";
import { freePort } from "./support/free-port.ts";
import { launch, type Launched } from "./support/launched.ts";
import { processesLeft, processesOf } from "./support/processes-of.ts";

const CLONE = path.resolve(import.meta.dirname, "../..");
const START = path.join(import.meta.dirname, "support/start-from-source.mjs");
const FIRST_LINK =
  /The first administrator comes by this link, once:\s+(http:\/\/127\.0\.0\.1:\d+)(\/first#)([\w-]{43})/;

let folder: string;
let postgres: RunningPostgres;
let firmUrl: string;

/** A PostgreSQL of someone's own, with a database that nobody has used yet. */
beforeEach(async () => {
  folder = mkdtempSync(path.join(os.tmpdir(), "cornerway-own-"));
  chmodSync(folder, 0o755); // run by root, PostgreSQL works as nobody and must be able to enter
  postgres = await startPostgres({ dataFolder: path.join(folder, "theirs"), keep: false });
  await createDatabase(postgres.ownerUrl, "firm");
  firmUrl = renamedDatabase(postgres.ownerUrl, "firm");
});

afterEach(async () => {
  for (const { pid } of processesOf(path.join(folder, "data"))) process.kill(pid, "SIGKILL");
  await processesLeft(path.join(folder, "data"), 5_000);
  await postgres.stop();
  rmSync(folder, { recursive: true, force: true });
});

const start = async (): Promise<Launched> =>
  launch(["node", "--conditions=development", START], CLONE, {
    CORNERWAY_DATA: path.join(folder, "data"),
    DATABASE_URL: firmUrl,
    PORT: String(await freePort()),
  });

async function end(service: Launched): Promise<void> {
  service.signalGroup("SIGINT");
  expect(await service.ended, service.output()).toBe(0);
}

const countPeople = () =>
  withClient(firmUrl, async (client) => (await client.query("select name, administrator from person")).rows);

it("a database that someone gives gets no demo; its first administrator comes by a link that is printed and in no log", async () => {
  const first = await start();
  const address = await first.address;
  await expect.poll(() => FIRST_LINK.exec(first.output())?.[3], { timeout: 5_000 }).toBeDefined();
  const [, origin, , secret = ""] = FIRST_LINK.exec(first.output()) ?? [];
  expect(origin).toBe(address);
  expect(first.output()).not.toContain("Sign-ins of the demo");
  expect(await countPeople()).toEqual([]);

  const headers = { "content-type": "application/json" };
  const opened = await fetch(`${address}/api/link`, { method: "POST", headers, body: JSON.stringify({ secret }) });
  expect(OpenedLink.parse(await opened.json())).toEqual({ kind: "first-administrator" });
  const body = {
    as: "first administrator",
    name: "Runa Feld",
    email: "runa@feld.example",
    password: "seven lanterns by the quay",
  };
  const cookie = opened.headers.getSetCookie()[0]?.split(";")[0] ?? "";
  const used = await fetch(`${address}/api/link/use`, {
    method: "POST",
    headers: { ...headers, cookie },
    body: JSON.stringify(body),
  });
  expect(used.status).toBe(201);
  const session =
    used.headers
      .getSetCookie()
      .find((line) => line.startsWith("cornerway_session"))
      ?.split(";")[0] ?? "";
  const account = await fetch(`${address}/api/account`, { headers: { cookie: session } });
  expect(Account.parse(await account.json())).toMatchObject({ administrator: true });
  await end(first);

  const second = await start();
  await second.address;
  await end(second);
  expect(second.output()).not.toMatch(/first#|Sign-ins of the demo/);
  expect(await countPeople()).toEqual([{ name: "Runa Feld", administrator: true }]);
  const log = readFileSync(path.join(folder, "data/server.log"), "utf8");
  expect(log).toContain("/api/link/use");
  for (const hidden of [secret, body.password]) expect(log).not.toContain(hidden);
});
