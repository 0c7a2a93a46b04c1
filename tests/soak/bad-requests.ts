// `npm run bench -- bad-requests`: a hundred thousand generated bad requests and messages (COUNT and SEED change that).
import { openPlace } from "./bad-requests/place.ts";
import { runBadRequests } from "./bad-requests/run-bad-requests.ts";
import { ownDatabase } from "./support/own-database.ts";

const count = Number(process.env["COUNT"] ?? 100_000);
const seed = Number(process.env["SEED"] ?? 1);
const database = await ownDatabase();
const place = await openPlace(database);
const beganMs = performance.now();
const report = await runBadRequests(place, { count, seed });
const seconds = ((performance.now() - beganMs) / 1000).toFixed(0);
await place.close();
await database.stop();
const statuses = Object.entries(report.statuses).map(([status, answers]) => `${status}: ${answers}`);
console.log(`${report.requests} requests and ${report.messages} messages, seed ${seed}, in ${seconds} s`);
console.log(`answers by status: ${statuses.join(", ")}`);
console.log(`faults: ${report.faults.length}`);
for (const fault of report.faults.slice(0, 20)) console.log(fault);
process.exitCode = report.faults.length === 0 ? 0 : 1;
