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
import { seedDemo, seededLines } from "./seed-demo.mjs";
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
  const seeded = await seedDemo({ words, database, environment: process.env, signal });
  for (const line of seededLines(seeded)) say(line);
}

/** @param {import("./folder-lock.mjs").LockNote} note */
function addressesOf({ ownerUrl, serviceUrl }) {
  if (ownerUrl !== undefined && serviceUrl !== undefined) return { ownerUrl, serviceUrl };
  throw new StartFailure("Cornerway is still coming up in this clone: wait for its address to appear, then repeat.");
}
