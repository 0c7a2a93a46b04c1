import { randomBytes, randomUUID } from "node:crypto";
import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { Draft, Revision } from "@cornerway/schema";
import { afterAll, beforeAll, expect, it } from "vitest";
import { startPostgres, type RunningPostgres } from "../../apps/api/src/database/index.ts";
import { openDatabase } from "../../apps/api/src/store/database.ts";
import { LiveClient } from "../../apps/api/test/support/live-client.ts";
import { act, place } from "../../apps/api/test/support/sample.ts";
import type { SignedIn } from "../two-process/drawing-client.ts";
import { openSharedProject, signIn } from "../two-process/shared-project.ts";
import { copiedPaths, readCompose, upstreams, type ComposeService } from "./support/compose-file.ts";
import { runToEnd, startService, type Stage, type Started } from "./support/compose-run.ts";
import { imageFolder } from "./support/image-folder.ts";
import { standInProxy, type StandInProxy } from "./support/stand-in-proxy.ts";

const projectId = randomUUID();
const compose = readCompose();
const started = new Map<string, Started>();
let scratch: string;
let database: RunningPostgres;
let stage: Stage;
let proxy: StandInProxy;
let architect: SignedIn;

beforeAll(async () => {
  scratch = mkdtempSync(path.join(os.tmpdir(), "cornerway-compose-"));
  chmodSync(scratch, 0o755); // run by root, PostgreSQL works as nobody and must be able to enter
  database = await startPostgres({ dataFolder: path.join(scratch, "database"), keep: false });
  stage = setStage();
  const tables = await runToEnd(service("tables"), stage);
  if (tables.status !== 0) throw new Error(`the tables were not made:\n${tables.output}`);
  for (const name of ["api-1", "api-2", "worker"]) started.set(name, await startService(service(name), stage));
  for (const one of started.values()) await untilHealthy(one);
  proxy = await standInProxy(() => upstreams().flatMap(portOfUpstream));
  const owner = openDatabase(database.ownerUrl);
  await openSharedProject(owner, projectId, 1);
  await owner.close();
}, 180_000);

afterAll(async () => {
  proxy.close();
  for (const one of started.values()) await one.kill();
  await database.stop();
  rmSync(scratch, { recursive: true, force: true });
});

async function untilHealthy(one: Started): Promise<void> {
  for (const beganMs = Date.now(); !(await one.healthy());)
    if (Date.now() - beganMs > 60_000) throw new Error(`not healthy:\n${one.output()}`);
}

const service = (name: string): ComposeService => {
  const found = compose.services[name];
  if (found === undefined) throw new Error(`docker-compose.yml has no ${name}`);
  return found;
};

/** The image, the secrets, and where on this machine the database, the files and the proxy are. */
function setStage(): Stage {
  const owner = new URL(database.ownerUrl);
  const folder = path.join(scratch, "image");
  imageFolder(folder, copiedPaths());
  const secrets = path.join(scratch, "secrets");
  mkdirSync(secrets);
  const random = () => randomBytes(32).toString("hex");
  const contents: Record<string, string> = { "owner-password": decodeURIComponent(owner.password) };
  for (const name of Object.keys(compose.secrets))
    writeFileSync(path.join(secrets, name), `${contents[name] ?? random()}\n`);
  return {
    folder,
    here: [
      ["@db:5432", `@${owner.host}`],
      ["/run/secrets", secrets],
      ["/var/lib/cornerway", path.join(scratch, "letters")],
      [proxyAddress(), "127.0.0.1"],
    ],
  };
}

const proxyAddress = () => service("api-1").environment["TRUST_PROXY"] ?? "";

const portOfUpstream = (address: string): number[] => {
  const one = started.get(address.split(":")[0] ?? "");
  return one === undefined || one.child.exitCode !== null || one.child.signalCode !== null ? [] : [one.port];
};

const originOf = (name: string) => `http://127.0.0.1:${started.get(name)?.port}`;

async function ask<T>(at: string, route: string, body?: object): Promise<T> {
  const headers = { cookie: architect.cookie, "csrf-token": architect.csrfToken };
  const post = {
    method: "POST",
    headers: { ...headers, "content-type": "application/json" },
    body: JSON.stringify(body),
  };
  const answer = await fetch(`${at}/api/projects/${projectId}${route}`, body === undefined ? { headers } : post);
  expect([200, 202]).toContain(answer.status);
  return (await answer.json()) as T;
}

it("the file's secrets are those that its services take, and its proxy passes on to both APIs and nothing else", () => {
  const taken = Object.values(compose.services).flatMap(({ secrets }) => secrets);
  expect([...new Set(taken)].sort()).toEqual(Object.keys(compose.secrets).sort());
  expect(upstreams()).toEqual(["api-1:3000", "api-2:3000"]);
  const published = Object.entries(compose.services).filter(([, { ports }]) => ports.length > 0);
  expect(published.map(([name]) => name)).toEqual(["proxy"]);
});

it("no secret stands in the environment of a process", () => {
  for (const { environment } of Object.values(compose.services))
    for (const [name, value] of Object.entries(environment)) {
      if (/PASSWORD|KEY/.test(name)) expect(name).toMatch(/_FILE$/);
      expect(value).not.toMatch(/\/\/[^/]*:[^/]*@/);
    }
});

it("a session opened through the one origin holds at both APIs, and the pages come from there too", async () => {
  architect = await signIn(proxy.origin, 0);
  for (const name of ["api-1", "api-2"]) expect(await ask(originOf(name), "/draft")).toMatchObject({ number: 0 });
  const page = await fetch(proxy.origin);
  expect({ status: page.status, type: page.headers.get("content-type") }).toMatchObject({ status: 200, type: /html/ });
});

it("an act done at one API is seen on a socket at the other", async () => {
  const headers = { cookie: architect.cookie, origin: originOf("api-2") };
  const watcher = new LiveClient(originOf("api-2"), `/api/projects/${projectId}/live`, headers);
  await watcher.say({ type: "resume", after: 0 });
  await ask(originOf("api-1"), "/draft/acts", act(0, [place(1)]));
  await expect.poll(() => watcher.entries.at(-1)?.kind, { timeout: 5_000 }).toBe("drawn");
  watcher.end();
});

it("a revision is assessed by the worker's process; the APIs take no jobs", async () => {
  const { number: draftNumber, contentDigest } = Draft.parse(await ask(proxy.origin, "/draft"));
  await ask(proxy.origin, "/revisions", { id: randomUUID(), draftNumber, contentDigest, remark: null });
  const state = async () => Revision.parse(await ask(proxy.origin, "/revisions/A")).assessment;
  await expect.poll(state, { timeout: 30_000 }).toBe("done");
  const metrics = async (name: string) =>
    (await fetch(`http://127.0.0.1:${started.get(name)?.metricsPort}/metrics`)).text();
  expect(await metrics("worker")).toContain('cornerway_job_seconds_count{task="assess revision",end="done"} 1');
  for (const name of ["api-1", "api-2"]) expect(await metrics(name)).not.toContain("cornerway_job_seconds_count{");
});

it("with one API killed the origin goes on, and nothing acknowledged is lost", async () => {
  const before = Draft.parse(await ask(proxy.origin, "/draft"));
  await started.get("api-1")?.kill();
  await ask(proxy.origin, "/draft/acts", act(before.number, [place(2)]));
  const after = Draft.parse(await ask(proxy.origin, "/draft"));
  expect(after.scheme.containers.map(({ id }) => id)).toEqual(["g1", "g2"]);
  const again = await startService(service("api-1"), stage);
  started.set("api-1", again);
  await untilHealthy(again);
  expect(Draft.parse(await ask(originOf("api-1"), "/draft")).contentDigest).toBe(after.contentDigest);
});
