// `npm run backup`, `restore`, `archive` and `bring-in`: on the database of the running service, on the one `npm start` would
// use, or on the one at DATABASE_URL. A restore goes into a data folder or database that is empty still; its tables are
// made as the backup had them, so nothing brings them up to date before.
import path from "node:path";
import { CLONE } from "./clone.mjs";
import { chooseDataFolder, makeDataFolder } from "./data-folder.mjs";
import { takeLock } from "./folder-lock.mjs";
import { openDatabase } from "./open-database.mjs";
import { prepareBuilt } from "./prepare-built.mjs";
import { prepareClone } from "./prepare-clone.mjs";
import { runCommand } from "./run-command.mjs";
import { runStep } from "./run-step.mjs";
import { say } from "./say.mjs";
import { keptSecretsKey } from "./secrets-key.mjs";
import { StartFailure } from "./start-failure.mjs";

const DIST = path.join(CLONE, "apps/api/dist");
const words = process.argv.slice(2);
const restores = words[0] === "restore";

await runCommand(async (signal) => {
  const { folder: dataFolder } = chooseDataFolder(CLONE, process.env);
  await prepareClone(prepareBuilt, signal);
  makeDataFolder(dataFolder);
  const taken = takeLock(path.join(dataFolder, "start.lock"));
  if ("heldBy" in taken) return keep(ownerOf(taken.heldBy), dataFolder, signal);
  try {
    const database = await open(dataFolder);
    try {
      await keep(database.ownerUrl, dataFolder, signal);
    } finally {
      await database.stop();
    }
  } finally {
    taken.lock.release();
  }
});

/** @param {string} dataFolder */
async function open(dataFolder) {
  /** @returns {Promise<typeof import("../src/database/index.ts")>} */
  const loadDatabase = () => import(path.join(DIST, "database/index.js"));
  if (!restores) return openDatabase({ loadDatabase, dataFolder, environment: process.env });
  const { startPostgres } = await loadDatabase();
  const { DATABASE_URL, SERVICE_DATABASE_URL } = process.env;
  return startPostgres({
    dataFolder,
    databaseUrl: DATABASE_URL || undefined,
    serviceDatabaseUrl: SERVICE_DATABASE_URL || undefined,
  });
}

/**
 * @param {string} ownerUrl
 * @param {string} dataFolder
 * @param {AbortSignal} signal
 */
async function keep(ownerUrl, dataFolder, signal) {
  const secretsKey = process.env["SECRETS_KEY"] || keptSecretsKey(dataFolder);
  const env = { ...process.env, OWNER_DATABASE_URL: ownerUrl, SECRETS_KEY: secretsKey };
  const command = [process.execPath, path.join(DIST, "keep.js"), ...words.map(inFolderOfCaller)];
  const { ok, output } = await runStep({ name: "keep", words: command, env, signal });
  if (!ok) throw new StartFailure(output.trimEnd());
  for (const line of output.trimEnd().split("\n")) say(line);
}

/**
 * npm runs a script in the clone; a file is named from where its caller stands.
 * @param {string} word
 */
function inFolderOfCaller(word) {
  return word.endsWith(".zip") ? path.resolve(process.env["INIT_CWD"] ?? process.cwd(), word) : word;
}

/** @param {import("./folder-lock.mjs").LockNote} note */
function ownerOf({ ownerUrl }) {
  if (ownerUrl !== undefined) return ownerUrl;
  throw new StartFailure("Cornerway is still coming up in this clone: wait for its address to appear, then repeat.");
}
