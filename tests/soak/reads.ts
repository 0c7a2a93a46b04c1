// `npm run bench -- reads`: reads of the service against a bare route that gives the same bytes with one query, taken in turn.
import { deepStrictEqual, strictEqual } from "node:assert/strict";
import { loadavg } from "node:os";
import autocannon from "autocannon";
import { bareService } from "./reads/bare-service.ts";
import { BuiltProcess } from "./support/built-process.ts";
import { ownDatabase } from "./support/own-database.ts";
import { openStreet, signInAt } from "./support/street.ts";

const rounds = 5;
const secondsEach = Number(process.env["SECONDS"] ?? 4);
const leastShare = 0.6;

const database = await ownDatabase();
const service = await BuiltProcess.make("server.js", { DATABASE_URL: database.serviceUrl, WORKER: "apart" });
await service.start();
const { projectIds, people } = await openStreet(database.ownerUrl, { projects: 1, architects: 2 });
const [person] = people;
if (person === undefined) throw new Error("nobody to read");
const session = await signInAt(service.origin, person);
const projectId = projectIds[0] ?? "";
await fillRecord();
const bare = await bareService(database.serviceUrl, projectId);

const routes = ["record?after=0&limit=20", "draft"];
let within = true;
for (const route of routes) {
  await sameBody(route);
  const own: number[] = [];
  const plain: number[] = [];
  for (let round = 0; round < rounds; round += 1) {
    own.push(await perSecond(`${service.origin}/api/projects/${projectId}/${route}`));
    plain.push(await perSecond(`${bare.origin}/${route}`));
  }
  const [ours, theirs] = [median(own), median(plain)];
  within &&= ours / theirs >= leastShare;
  console.log(
    `${route}: ${ours.toFixed(0)} a second, bare ${theirs.toFixed(0)}, share ${((100 * ours) / theirs).toFixed(0)} %`,
  );
}
console.log(
  `load of the machine ${(loadavg()[0] ?? 0).toFixed(1)}; ${within ? "at least" : "less than"} ${leastShare * 100} % of bare routes`,
);
await bare.close();
await service.kill();
await database.stop();
process.exit(within ? 0 : 1);

async function perSecond(url: string): Promise<number> {
  const headers = { cookie: session.cookie };
  const { requests, non2xx } = await autocannon({ url, headers, connections: 10, duration: secondsEach });
  if (non2xx > 0) throw new Error(`${url}: ${non2xx} answers were not 2xx`);
  return requests.average;
}

/** Both answers say the same, at the same length. */
async function sameBody(route: string): Promise<void> {
  const headers = { cookie: session.cookie };
  const own = await (await fetch(`${service.origin}/api/projects/${projectId}/${route}`, { headers })).text();
  const plain = await (await fetch(`${bare.origin}/${route}`)).text();
  deepStrictEqual(JSON.parse(own), JSON.parse(plain));
  strictEqual(own.length, plain.length);
  console.log(`${route}: ${own.length} bytes from both`);
}

function median(values: number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;
}

/** Twenty acts of one post each. */
async function fillRecord(): Promise<void> {
  const headers = { cookie: session.cookie, "csrf-token": session.csrfToken, "content-type": "application/json" };
  for (let k = 0; k < 20; k += 1) {
    const post = {
      id: `p${k}`,
      tag: `P${k}`,
      xUm: k * 1_000_000,
      yUm: 0,
      baseZUm: 0,
      topZUm: 2_400_000,
      turnMdeg: 0,
      section: "HSS 4x4x1/4",
    };
    const body = JSON.stringify({ id: crypto.randomUUID(), base: k, operations: [{ kind: "post.set", post }] });
    const answer = await fetch(`${service.origin}/api/projects/${projectId}/draft/acts`, {
      method: "POST",
      headers,
      body,
    });
    if (!answer.ok) throw new Error(await answer.text());
  }
}
