import { randomUUID } from "node:crypto";
import { execFileSync } from "node:child_process";
import { chmodSync, mkdtempSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { Draft, ProjectSummary, RevisionSummary, Session, type DraftAct } from "@cornerway/schema";
import { afterAll, afterEach, beforeAll, beforeEach, expect, it, vi } from "vitest";
import { z } from "zod";
import { freePort } from "./support/free-port.ts";
import { launch, type Launched } from "./support/launched.ts";
import { processesLeft, processesOf } from "./support/processes-of.ts";

const CLONE = path.resolve(import.meta.dirname, "../..");
const DRAWERS = 4;
const ACTS_BEFORE_THE_END = 40;

/** What the first start left: the demo is made, its revisions are assessed, the service has ended. */
let madeFolder: string;
let dataFolder: string;
let nextTagNumber = 1000;

beforeAll(async () => {
  madeFolder = dataFolder = newFolder();
  const service = await npmStart();
  const { project, headers } = await signIn(await service.address, service.output());
  const revisions = async () =>
    z.array(RevisionSummary).parse(await (await fetch(`${project}/revisions`, { headers })).json());
  await vi.waitUntil(async () => (await revisions()).every(({ assessment }) => assessment === "done"), {
    ...{ timeout: 180_000, interval: 500 },
  });
  service.signalGroup("SIGINT");
  await service.ended;
}, 240_000);

afterAll(() => clear(madeFolder));

beforeEach(() => {
  dataFolder = newFolder();
  execFileSync("cp", ["-a", `${madeFolder}/.`, dataFolder]); // its database belongs to another account under root
});

async function clear(folder: string): Promise<void> {
  for (const { pid } of processesOf(folder)) process.kill(pid, "SIGKILL");
  await processesLeft(folder, 5_000);
  rmSync(folder, { recursive: true, force: true });
}

function newFolder(): string {
  const folder = mkdtempSync(path.join(os.tmpdir(), "cornerway-whole-"));
  chmodSync(folder, 0o755); // run by root, PostgreSQL works as nobody and must be able to enter
  return folder;
}

afterEach(() => clear(dataFolder));

it.each<[string, (service: Launched) => void]>([
  ["Ctrl-C", (service) => service.signalGroup("SIGINT")],
  ["SIGTERM to npm", (service) => process.kill(service.child.pid ?? 0, "SIGTERM")],
  ["the start killed outright", () => process.kill(starter(), "SIGKILL")],
])(
  "npm start in mid-drawing, ended by %s: every acknowledged act is in the draft after the next start",
  async (_, end) => {
    const first = await npmStart();
    const architect = await signIn(await first.address, first.output());
    const acknowledged = await drawUntil(architect, () => end(first));
    await first.ended;
    expect(await processesLeft(dataFolder, 15_000)).toEqual([]);
    expect(acknowledged.length).toBeGreaterThanOrEqual(ACTS_BEFORE_THE_END);

    const second = await npmStart();
    const again = await signIn(await second.address, second.output());
    const { scheme } = await readDraft(again);
    expect(scheme.pads.map(({ id }) => id)).toEqual(expect.arrayContaining(acknowledged));
    second.signalGroup("SIGINT");
    await second.ended;
  },
);

it("a second start installs, builds and migrates nothing", async () => {
  const startMs = performance.now();
  const second = await npmStart();
  await second.address;
  console.log(`the second start took ${Math.round(performance.now() - startMs)} ms`);
  expect(second.output()).not.toMatch(/Installing|Building|brought up to date/);
});

it("the service answers for its screens and itself on one origin under NODE_ENV=production", async () => {
  const service = await npmStart({ NODE_ENV: "production" });
  const address = await service.address;
  const page = await fetch(address);
  expect(page.headers.get("content-type")).toContain("text/html");
  expect(await page.text()).toContain("<title>");
  expect((await fetch(`${address}/health`)).status).toBe(200);
  expect((await fetch(`${address}/api/session`)).status).toBe(401);
});

interface Architect {
  project: string;
  headers: Record<string, string>;
}

async function npmStart(env: NodeJS.ProcessEnv = {}): Promise<Launched> {
  return launch(["npm", "start"], CLONE, { CORNERWAY_DATA: dataFolder, PORT: String(await freePort()), ...env });
}

/** Signs in with what the start printed for the architect. */
async function signIn(address: string, output: string): Promise<Architect> {
  const [, email, password] = /^ +architect .*? (\S+@\S+) +(\S+)$/m.exec(output) ?? [];
  const answer = await fetch(`${address}/api/session`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ email, password }),
  });
  const { csrfToken } = Session.parse(await answer.json());
  const cookie = answer.headers
    .getSetCookie()
    .map((line) => line.split(";")[0])
    .join("; ");
  const headers = { cookie, "csrf-token": csrfToken, "content-type": "application/json" };
  const [project] = z.array(ProjectSummary).parse(await (await fetch(`${address}/api/projects`, { headers })).json());
  return { project: `${address}/api/projects/${project?.id}`, headers };
}

async function readDraft({ project, headers }: Architect): Promise<Draft> {
  return Draft.parse(await (await fetch(`${project}/draft`, { headers })).json());
}

/** Several hands set pads as fast as they can; once enough are acknowledged `end` is called, and each hand goes on until refused. */
async function drawUntil(architect: Architect, end: () => void): Promise<string[]> {
  const acknowledged: string[] = [];
  const { number: base } = await readDraft(architect);
  const drawOn = async (): Promise<void> => {
    for (;;) {
      const pad = randomUUID();
      if (!(await isAcknowledged(architect, padAct(base, pad)))) return;
      if (acknowledged.push(pad) === ACTS_BEFORE_THE_END) end();
    }
  };
  await Promise.all(Array.from({ length: DRAWERS }, drawOn));
  return acknowledged;
}

/** False once the service has ended: it takes no more requests then. */
async function isAcknowledged({ project, headers }: Architect, act: DraftAct): Promise<boolean> {
  try {
    const answer = await fetch(`${project}/draft/acts`, { method: "POST", headers, body: JSON.stringify(act) });
    if (answer.status >= 400 && answer.status !== 503) throw new RangeError(`refused: ${await answer.text()}`);
    return answer.ok;
  } catch (error) {
    if (error instanceof RangeError) throw error;
    return false;
  }
}

function padAct(base: number, id: string): DraftAct {
  const sizeUm = { lengthUm: 600_000, widthUm: 600_000, depthUm: 500_000 };
  const pad = { id, tag: `F${nextTagNumber++}`, xUm: 0, yUm: 0, topZUm: 0, turnMdeg: 0, ...sizeUm };
  return { id: randomUUID(), base, operations: [{ kind: "pad.set", pad }] };
}

function starter(): number {
  const found = processesOf(dataFolder).filter(({ words }) => words.some((word) => word.endsWith("start/start.mjs")));
  expect(found.length).toBeGreaterThan(0);
  return found.find(({ words }) => words[0]?.endsWith("node"))?.pid ?? 0;
}
