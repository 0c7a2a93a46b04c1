import { randomUUID } from "node:crypto";
import { catalogRows } from "@cornerway/engine";
import { contentDigest, digestOf, Draft, type Operation } from "@cornerway/schema";
import { afterAll, beforeAll, expect, it } from "vitest";
import { treeHead, appendLeaf } from "../../apps/api/src/record/tree-head.ts";
import { openDatabase, type Database } from "../../apps/api/src/store/database.ts";
import { freshDatabase, type FreshDatabase } from "../support/fresh-database.ts";
import { DrawingClient, type Processes } from "./drawing-client.ts";
import { startProcess, type ServiceProcess } from "./service-process.ts";
import { openSharedProject, signIn } from "./shared-project.ts";

const clientCount = 20;
const actsEach = 100;
const total = clientCount * actsEach;

let database: FreshDatabase;
let owner: Database;
let first: ServiceProcess;
let second: ServiceProcess;
const projectId = randomUUID();
const clients: DrawingClient[] = [];

beforeAll(async () => {
  database = await freshDatabase();
  owner = openDatabase(database.ownerUrl);
  await openSharedProject(owner, projectId, clientCount);
  [first, second] = await Promise.all([startProcess(database.serviceUrl), startProcess(database.serviceUrl)]);
});

afterAll(async () => {
  for (const client of clients) client.end();
  first.process.kill("SIGKILL");
  second.process.kill("SIGKILL");
  await owner.close();
  await database.drop();
});

it(`${total} acts of ${clientCount} people at two processes, one killed and the listeners cut, are each in the record once, without gaps, and every screen ends the same`, async () => {
  const processes: Processes = { origins: [first.origin, second.origin] };
  for (let n = 0; n < clientCount; n += 1) {
    const session = await signIn(processes.origins[n % 2] ?? "", n);
    clients.push(new DrawingClient(processes, projectId, session, { turn: n, strict: n < 2 }));
  }
  const began = Date.now();
  const drawing = Promise.all(clients.map((client, n) => drawAll(client, n)));
  await acknowledgedReach(total * 0.35);
  const cut = await cutListeners();
  await acknowledgedReach(total * 0.6);
  processes.origins = [second.origin];
  first.process.kill("SIGKILL");
  const killedAt = acknowledgedCount();
  await drawing;
  const drawnMs = Date.now() - began;

  const entries = await owner.connection.recordEntry.findMany({
    where: { projectId },
    orderBy: { number: "asc" },
    include: { payload: true },
  });
  const last = entries.length;
  await expect.poll(() => clients.map(({ upTo }) => upTo)).toEqual(clients.map(() => last));

  const upToLast = Array.from({ length: last }, (_, at) => at + 1);
  expect(entries.map(({ number }) => number)).toEqual(upToLast);
  for (const { numbers } of clients) expect(numbers).toEqual(upToLast);

  const drawn = entries.filter(({ kind }) => kind === "drawn").map(({ payload }) => actIdOf(payload?.payload));
  const acknowledged = clients.flatMap((client) => [...client.acknowledged.keys()]);
  expect(acknowledged).toHaveLength(total);
  expect([...drawn].sort()).toEqual([...acknowledged].sort());

  const draft = await readDraft();
  const digests = new Set(clients.map(({ scheme }) => contentDigest(scheme, digestOf(catalogRows))));
  expect([...digests]).toEqual([draft.contentDigest]);
  expect(draft.number).toBe(total);
  expect(entries.at(-1)?.head).toBe(
    treeHead(entries.reduce<string[]>((frontier, { leaf }, at) => appendLeaf(frontier, at, leaf), [])),
  );

  const sum = (count: (client: DrawingClient) => number) => clients.reduce((all, client) => all + count(client), 0);
  const opened = sum(({ connections }) => connections);
  const endings = [...new Set(clients.flatMap(({ closed }) => closed))];
  expect(endings).toEqual([1006]); // the killed process, and no line cut for any other reason

  second.process.kill("SIGTERM");
  expect(await second.ended).toBe(0);
  console.log(
    [
      `two processes, ${clientCount} clients, ${total} acts acknowledged in ${(drawnMs / 1000).toFixed(1)} s (${Math.round((total / drawnMs) * 1000)} a second)`,
      `${cut} listening connections terminated, one process SIGKILLed after ${killedAt} acts; the other left with exit code 0`,
      `record 1 to ${last} without a gap; ${drawn.length} drawn entries for ${acknowledged.length} acknowledged acts, each once`,
      `${sum(({ repeats }) => repeats)} acts sent again, ${sum(({ conflicts }) => conflicts)} conflicts drawn again, ${opened} sockets opened, those of the killed process ended with ${endings.join()}`,
      `${clientCount} clients and the service at content digest ${draft.contentDigest}`,
    ].join("\n"),
  );
});

async function drawAll(client: DrawingClient, n: number): Promise<void> {
  for (let k = 0; k < actsEach; k += 1) await client.draw([operationFor(n, k)]);
}

/** Each person sets ten posts and moves them about; every twentieth act turns north, which they all fight over. */
function operationFor(n: number, k: number): Operation {
  if (k % 20 === 19)
    return { kind: "site.change", site: { northMdeg: n * 1000 + k, groundZUm: 0, edition: "IBC 2021" } };
  const id = `p-${n}-${k % 10}`;
  const place = { xUm: n * 1_000_000, yUm: k * 10_000 };
  if (k >= 10) return { kind: "post.move", id, ...place };
  const rest = { tag: `P${n * 10 + k}`, baseZUm: 0, topZUm: 2_400_000, turnMdeg: 0, section: "HSS 4x4x1/4" };
  return { kind: "post.set", post: { id, ...place, ...rest } };
}

const acknowledgedCount = () => clients.reduce((count, { acknowledged }) => count + acknowledged.size, 0);

const acknowledgedReach = (count: number) =>
  expect.poll(acknowledgedCount, { timeout: 280_000, interval: 10 }).toBeGreaterThanOrEqual(count);

async function cutListeners(): Promise<number> {
  const cut = await owner.connection.$queryRaw<object[]>`
    select pg_terminate_backend(pid) from pg_stat_activity where datname = current_database() and query ilike 'listen%'`;
  return cut.length;
}

async function readDraft(): Promise<Draft> {
  const session = await signIn(second.origin, 0);
  const response = await fetch(`${second.origin}/api/projects/${projectId}/draft`, {
    headers: { cookie: session.cookie },
  });
  return Draft.parse(await response.json());
}

function actIdOf(payload: unknown): string {
  if (typeof payload === "object" && payload !== null && "actId" in payload) return String(payload.actId);
  throw new Error("a drawn entry without an act id");
}
