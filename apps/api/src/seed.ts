import { parseArgs } from "node:util";
import { demoPeople } from "./seed/demo-people.ts";
import { demoProjectId, seedDemo } from "./seed/seed-demo.ts";
import { openDatabase } from "./store/database.ts";
import { eraseProject } from "./store/erase-project.ts";

const { values } = parseArgs({ options: { reset: { type: "boolean", default: false } } });
const url = process.env["OWNER_DATABASE_URL"];
if (url === undefined) throw new Error("OWNER_DATABASE_URL: the address under which the owner of the tables signs in");

const database = openDatabase(url);
try {
  if (values.reset) await eraseProject(database.connection, demoProjectId);
  await seedDemo(database);
} finally {
  await database.close();
}

const signIns = demoPeople.map(({ name, role, email, password }) => ({ name, role, email, password }));
process.stdout.write(`${JSON.stringify({ signIns })}\n`);
