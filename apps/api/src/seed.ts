import { parseArgs } from "node:util";
import { demoPeople } from "./seed/demo-people.ts";
import { demoProjectId, demoProjects } from "./seed/demo-projects.ts";
import { seedDemo } from "./seed/seed-demo.ts";
import { openDatabase } from "./store/database.ts";
import { eraseProject } from "./store/erase-project.ts";
import { lastNumber } from "./store/record-rows.ts";

const { values } = parseArgs({ options: { reset: { type: "boolean", default: false } } });
const url = process.env["OWNER_DATABASE_URL"];
if (url === undefined) throw new Error("OWNER_DATABASE_URL: the address under which the owner of the tables signs in");

const database = openDatabase(url);
let before: number | undefined;
try {
  before = await lastNumber(database.connection, demoProjectId);
  if (values.reset) for (const { id } of demoProjects) await eraseProject(database.connection, id);
  await seedDemo(database);
} finally {
  await database.close();
}

const what = before === undefined ? "made" : values.reset ? "erased and made anew" : "left as it was";
const signIns = demoPeople.map(({ name, role, email, password }) => ({ name, role, email, password }));
process.stdout.write(`${JSON.stringify({ signIns, what, entriesBefore: before ?? 0 })}\n`);
