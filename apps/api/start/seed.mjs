// `npm run seed:demo`: makes the demo where it is missing, in the database of the running service or in the one `npm start`
// would use. With `-- --reset` it erases the demo first, with everything people did in it; nothing else is ever erased.
import path from "node:path";
import { CLONE } from "./clone.mjs";
import { chooseDataFolder, makeDataFolder } from "./data-folder.mjs";
import { takeLock } from "./folder-lock.mjs";
import { openDatabase } from "./open-database.mjs";
import { prepareBuilt } from "./prepare-built.mjs";
import { prepareClone } from "./prepare-clone.mjs";
import { runCommand } from "./run-command.mjs";
import { say } from "./say.mjs";
import { seedDemo, signInLines } from "./seed-demo.mjs";
import { StartFailure } from "./start-failure.mjs";

const DIST = path.join(CLONE, "apps/api/dist");

await runCommand(async (signal) => {
  const { folder: dataFolder } = chooseDataFolder(CLONE, process.env);
  await prepareClone(prepareBuilt, signal);
  makeDataFolder(dataFolder);
  const taken = takeLock(path.join(dataFolder, "start.lock"));
  if ("heldBy" in taken) return seed(addressesOf(taken.heldBy), signal);
  try {
    await seedStopped(dataFolder, signal);
  } finally {
    taken.lock.release();
  }
});

/**
 * @param {string} dataFolder
 * @param {AbortSignal} signal
 */
async function seedStopped(dataFolder, signal) {
  const loadDatabase = () => import(path.join(DIST, "database/index.js"));
  const database = await openDatabase({ loadDatabase, dataFolder, environment: process.env });
  try {
    await seed(database, signal);
  } finally {
    await database.stop();
  }
}

/**
 * @param {{ ownerUrl: string, serviceUrl: string }} database
 * @param {AbortSignal} signal
 */
async function seed(database, signal) {
  const words = [path.join(DIST, "seed.js"), ...process.argv.slice(2)];
  const { signIns, what, entriesBefore } = await seedDemo({ words, database, environment: process.env, signal });
  for (const line of [...told[what](entriesBefore), ...signInLines(signIns)]) say(line);
}

/** @type {Record<import("./seed-demo.mjs").Seeded["what"], (entries: number) => string[]>} */
const told = {
  made: () => ["The demo project is made."],
  "left as it was": (entries) => [
    `The demo project is there, with ${entries} entries in its record, and is left as it is.`,
    "`npm run seed:demo -- --reset` erases it with its record and makes it anew.",
  ],
  "erased and made anew": (entries) => [
    `The demo project is erased, with the ${entries} entries of its record, and made anew.`,
    "Whoever had it open is disconnected and finds the new one. Other projects and all people are as they were.",
  ],
};

/** @param {import("./folder-lock.mjs").LockNote} note */
function addressesOf({ ownerUrl, serviceUrl }) {
  if (ownerUrl !== undefined && serviceUrl !== undefined) return { ownerUrl, serviceUrl };
  throw new StartFailure("Cornerway is still coming up in this clone: wait for its address to appear, then repeat.");
}
