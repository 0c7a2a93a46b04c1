// `npm run bench -- faults`: kills processes, the database and connections under load, a thousand times (KILLS changes
// that), and looks after each whether every acknowledged act is in the record and whether the record verifies.
import { randomUUID } from "node:crypto";
import { loadavg } from "node:os";
import { setTimeout as pause } from "node:timers/promises";
import postgres from "postgres";
import { openDatabase } from "../../apps/api/src/store/database.ts";
import { place } from "../../apps/api/test/support/sample.ts";
import { openSharedProject, signIn } from "../two-process/shared-project.ts";
import { Drawer } from "./faults/drawer.ts";
import { KillableDatabase } from "./faults/killable-database.ts";
import { kill, kindOf, kinds, type Fleet, type Kind } from "./faults/kills.ts";
import { RecordCheck } from "./faults/record-check.ts";
import { BuiltProcess } from "./support/built-process.ts";

const wanted = Number(process.env["KILLS"] ?? 1_000);
const drawersOfProject = 3;
const pauseAfterKillMs = 300;
const revisionEveryMs = 20_000;
const longestSettleMs = 120_000;

const database = await KillableDatabase.open();
const projects = [randomUUID()];
const fleet = await openFleet();
const sql = postgres(database.ownerUrl, { max: 2, onnotice: () => undefined, connect_timeout: 5 });
const drawers = await openDrawers();
const checks = projects.map((id) => new RecordCheck(id));
const recorded = new Set<string>();
const counts: Record<Kind, number> = { API: 0, worker: 0, database: 0, listener: 0, "mid-transaction": 0 };
const origins = fleet.apis.map(({ origin }) => origin);

await drawers[0]?.act([place(1)]); // a revision holds a container
const beganMs = Date.now();
const faults: string[] = [];
const drawing = Promise.all(drawers.map((drawer) => drawer.draw())).catch(
  (error: unknown) => void faults.push(String(error)),
);
const revisions = setInterval(() => void drawers[0]?.sendRevision(), revisionEveryMs);
for (let n = 0, done = 0; done < wanted && faults.length === 0; n += 1) {
  const kind = kindOf(n);
  if (!(await whenUp(() => kill(kind, fleet, sql, done)))) continue;
  counts[kind] += 1;
  done += 1;
  await pause(pauseAfterKillMs);
  await whenUp(verify);
  if (done % 50 === 0) console.log(line());
}
clearInterval(revisions);
for (const drawer of drawers) drawer.end();
await drawing;
await verify();
await revisionsAnswered();
console.log(line());
console.log(faults.length === 0 ? "no acknowledged act lost; the record verified after every kill" : faults.join("\n"));
for (const one of [...fleet.apis, ...fleet.workers]) await one.kill();
await sql.end({ timeout: 1 });
await database.close();
process.exit(faults.length === 0 ? 0 : 1);

async function openFleet(): Promise<Fleet> {
  const environment = { DATABASE_URL: database.serviceUrl };
  const apis = [];
  const workers = [];
  for (let n = 0; n < 2; n += 1) {
    apis.push(await BuiltProcess.make("server.js", { ...environment, WORKER: "apart" }));
    workers.push(await BuiltProcess.make("worker.js", environment));
  }
  for (const one of [...apis, ...workers]) await one.start();
  return { apis, workers, database };
}

async function openDrawers(): Promise<Drawer[]> {
  const owner = openDatabase(database.ownerUrl);
  for (const id of projects) await openSharedProject(owner, id, drawersOfProject);
  await owner.close();
  const people = Array.from({ length: drawersOfProject }, (_, n) => n);
  const sessions = await Promise.all(people.map((n) => signIn(fleet.apis[0]?.origin ?? "", n)));
  const all = fleet.apis.map(({ origin }) => origin);
  return projects.flatMap((id) => sessions.map((session, n) => new Drawer(all, id, session, n)));
}

/** Every act acknowledged so far is in the record, and everything new in the record is as it should be. */
async function verify(): Promise<boolean> {
  const owed = drawers.flatMap(({ acknowledged }) => [...acknowledged]); // before the record is read
  for (const check of checks) for (const id of await check.goOn(sql)) recorded.add(id);
  const lost = owed.filter((id) => !recorded.has(id));
  if (lost.length > 0) faults.push(`acknowledged and not in the record: ${lost.join(", ")}`);
  return true;
}

/** Repeats what could not be done because the database was just away; what the check itself finds wrong ends the run. */
async function whenUp(work: () => Promise<boolean>): Promise<boolean> {
  for (;;) {
    try {
      return await work();
    } catch (error) {
      if (error instanceof Error && /entry \d+ of/.test(error.message)) {
        faults.push(error.message);
        return false;
      }
      await pause(200);
    }
  }
}

/** Every revision that was sent has one answer, whatever happened to the workers. */
async function revisionsAnswered(): Promise<void> {
  for (const settleMs = Date.now(); Date.now() - settleMs < longestSettleMs; await pause(1_000)) {
    const [row] = await sql<{ sent: number; answered: number; done: number }[]>`
      select (select count(*)::int from "revision") as "sent", (select count(*)::int from "assessment") as "answered",
        (select count(*)::int from "assessment" where "state" = 'done') as "done"`;
    if (row?.sent !== row?.answered) continue;
    return console.log(`${row?.sent} revisions sent, ${row?.answered} answered once each, ${row?.done} of them done`);
  }
  faults.push("revisions wait for their assessment");
}

function line(): string {
  const sum = (count: (drawer: Drawer) => number) => drawers.reduce((all, drawer) => all + count(drawer), 0);
  const minutes = ((Date.now() - beganMs) / 60_000).toFixed(1);
  const byKind = kinds.map((kind) => `${kind} ${counts[kind]}`).join(", ");
  const done = Object.values(counts).reduce((all, count) => all + count, 0);
  const load = loadavg()[0]?.toFixed(1);
  return `${done} kills (${byKind}) in ${minutes} min at load ${load}: ${sum(({ acknowledged }) => acknowledged.size)} acts acknowledged, ${sum(({ repeats }) => repeats)} sent again, record at ${checks.map(({ number }) => number).join()}, ${origins.length} APIs`;
}
