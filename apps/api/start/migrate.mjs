// `npm run migrate`: brings the tables at DATABASE_URL up to date from a built tree, and lets the service's role sign in with
// SERVICE_PASSWORD where that is given. `npm start` does the same by itself; this is for a service run some other way.
import path from "node:path";
import { CLONE } from "./clone.mjs";
import { runCommand } from "./run-command.mjs";
import { say } from "./say.mjs";
import { StartFailure } from "./start-failure.mjs";

await runCommand(async () => {
  const ownerUrl = process.env["DATABASE_URL"];
  if (!ownerUrl)
    throw new StartFailure("DATABASE_URL is not set: give the address under which the owner of the tables signs in.");
  const { ensureServiceRole, migrate } = await database();
  await ensureServiceRole(ownerUrl, process.env["SERVICE_PASSWORD"] || undefined);
  const applied = await migrate(ownerUrl);
  say(applied.length === 0 ? "The tables are up to date." : `Tables brought up to date: ${applied.join(", ")}`);
});

/** @returns {Promise<typeof import("../src/database/index.ts")>} */
function database() {
  return import(path.join(CLONE, "apps/api/dist/database/index.js"));
}
