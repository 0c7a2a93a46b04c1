// `npm run migrate`: brings the tables at DATABASE_URL up to date from a built tree, and lets the service's role sign in with
// SERVICE_PASSWORD where that is given. NAME_FILE names a file that holds NAME. `npm start` does the same by itself; this is for a service run some other way.
import path from "node:path";
import { CLONE } from "./clone.mjs";
import { runCommand } from "./run-command.mjs";
import { say } from "./say.mjs";
import { StartFailure } from "./start-failure.mjs";

await runCommand(async () => {
  const { fromFiles, withPassword } = await files();
  const { DATABASE_URL, DATABASE_PASSWORD, SERVICE_PASSWORD } = fromFiles(process.env);
  if (!DATABASE_URL)
    throw new StartFailure("DATABASE_URL is not set: give the address under which the owner of the tables signs in.");
  const ownerUrl = withPassword(DATABASE_URL, DATABASE_PASSWORD || undefined);
  const { ensureServiceRole, migrate } = await database();
  await ensureServiceRole(ownerUrl, SERVICE_PASSWORD || undefined);
  const applied = await migrate(ownerUrl);
  say(applied.length === 0 ? "The tables are up to date." : `Tables brought up to date: ${applied.join(", ")}`);
});

/** @returns {Promise<typeof import("../src/database/index.ts")>} */
function database() {
  return import(path.join(CLONE, "apps/api/dist/database/index.js"));
}

/** @returns {Promise<typeof import("../src/from-files.ts")>} */
function files() {
  return import(path.join(CLONE, "apps/api/dist/from-files.js"));
}
