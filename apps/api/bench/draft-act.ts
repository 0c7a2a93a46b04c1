import { randomUUID } from "node:crypto";
import os from "node:os";
import path from "node:path";
import { performance } from "node:perf_hooks";
import { emptyScheme, type Operation, type Scheme } from "@cornerway/schema";
import { migrate, startPostgres } from "../src/database/index.ts";
import { digestOfScheme } from "../src/store/digest-of-scheme.ts";
import { draw } from "../src/services/draw.ts";
import { openProject } from "../src/services/open-project.ts";
import { openDatabase, type Database } from "../src/store/database.ts";
import { updateDraft } from "../src/store/draft-rows.ts";
import { insertPerson } from "../src/store/person-rows.ts";

// One drawing act from the service's function to the commit, on a small scheme and on the largest one there may be.
// Budgets are judgement: a drop is acknowledged before it is noticed, on the largest scheme within a quarter second.
const budgets = { small: 50, largest: 250 };
const rounds = 60;

const server = await startPostgres({
  dataFolder: path.join(os.tmpdir(), `cornerway-bench-${process.pid}`),
  keep: false,
});
await migrate(server.ownerUrl);
const owner = openDatabase(server.ownerUrl);
try {
  const small = await median(owner, schemeOf(9, 3));
  const largest = await median(owner, schemeOf(500, 10));
  for (const [name, ms] of [["small", small] as const, ["largest", largest] as const]) {
    console.log(`draft act, ${name} scheme: median ${ms.toFixed(1)} ms (budget ${budgets[name]} ms)`);
    if (ms > budgets[name]) process.exitCode = 1;
  }
} finally {
  await owner.close();
  await server.stop();
}

async function median(database: Database, scheme: Scheme): Promise<number> {
  const person = { id: randomUUID(), name: "A", email: `${randomUUID()}@bench.example` };
  const boss = { id: randomUUID(), name: "B", email: `${randomUUID()}@bench.example` };
  for (const one of [person, boss]) await insertPerson(database.connection, { ...one, passwordHash: "-" });
  const projectId = randomUUID();
  const members = [
    { person, role: "architect" as const },
    { person: boss, role: "owner" as const },
  ];
  await openProject(database, { id: projectId, name: "Bench", place: "-", client: "-" }, members);
  await updateDraft(database.connection, projectId, { number: 0, contentDigest: digestOfScheme(scheme), scheme });
  const times: number[] = [];
  for (let n = 0; n < rounds; n += 1) {
    const move: Operation = { kind: "container.move", id: "c0001", xUm: 0, yUm: n, zUm: 0 };
    const from = performance.now();
    const outcome = await draw(
      database,
      { projectId, person, roles: ["architect"] },
      { id: randomUUID(), base: n, operations: [move] },
    );
    if (!outcome.ok) throw new Error(outcome.refusal.code);
    times.push(performance.now() - from);
  }
  return times.sort((a, b) => a - b)[rounds / 2] ?? Number.NaN;
}

function schemeOf(units: number, openingsEach: number): Scheme {
  const four = (n: number) => String(n).padStart(4, "0");
  const containers = Array.from({ length: units }, (_, n) => ({
    ...{ id: `c${four(n)}`, tag: `C${n}`, type: "1CC" as const, xUm: n * 7_000_000, yUm: 0, zUm: 0, turnMdeg: 0 },
  }));
  const openings = Array.from({ length: units * openingsEach }, (_, n) => ({
    ...{ id: `o${four(n)}`, tag: `O${n}`, containerId: `c${four(n % units)}`, face: "left" as const },
    ...{ use: "window" as const, offsetUm: n, sillUm: 0, widthUm: 900_000, heightUm: 900_000, framed: true },
  }));
  return { ...emptyScheme, containers, openings };
}
