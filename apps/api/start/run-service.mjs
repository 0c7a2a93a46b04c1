import { once } from "node:events";
import path from "node:path";
import { addressOf, isOpenToNetwork } from "./address.mjs";
import { choosePort } from "./choose-port.mjs";
import { CLONE } from "./clone.mjs";
import { chooseDataFolder, makeDataFolder } from "./data-folder.mjs";
import { endWorkers } from "./end-workers.mjs";
import { takeLock } from "./folder-lock.mjs";
import { openDatabase } from "./open-database.mjs";
import { prepareClone } from "./prepare-clone.mjs";
import { processLife } from "./process-life.mjs";
import { say } from "./say.mjs";
import { keptSecretsKey } from "./secrets-key.mjs";
import { seedDemo, signInLines } from "./seed-demo.mjs";
import { StartFailure } from "./start-failure.mjs";
import { superviseServer } from "./supervise-server.mjs";

/**
 * The parts that differ between the built service and the one for development.
 * @typedef {object} ServiceParts
 * @property {(control: import("./prepare-clone.mjs").StepControl) => Promise<void>} prepare
 * @property {() => Promise<typeof import("../src/database/index.ts")>} loadDatabase called after `prepare`
 * @property {string} [migrationsFolder] those of the clone by default
 * @property {string[]} serverWords what node runs to serve
 * @property {string[]} seedWords what node runs to see to the demo
 * @property {(address: string, dataFolder: string) => Promise<{ stop: () => Promise<void> }>} [beside] what runs beside the server and ends before it
 *
 * @typedef {object} Asked
 * @property {NodeJS.ProcessEnv} environment
 * @property {AbortSignal} signal comes when the service is to end
 */

const PATIENCE_WITH_OLD_SERVER_MS = 20_000;

/**
 * Brings the service up, keeps it up until the signal comes, and takes it down in order: first the server, which finishes
 * the requests in flight, then the database.
 * @param {ServiceParts & Asked} service
 */
export async function runService(service) {
  const { environment, signal } = service;
  const host = environment["HOST"] || "127.0.0.1";
  const { folder: dataFolder, why } = chooseDataFolder(CLONE, environment);
  if (why !== undefined) say(`Data is kept in ${dataFolder}: ${why}.`);
  const lock = lockData(dataFolder);
  try {
    if (environment["PORT"]) await choosePort(environment, host); // said now, not after a long first installation
    await endWorkers(lock.leftOver?.workers ?? [], PATIENCE_WITH_OLD_SERVER_MS);
    await prepareClone(service.prepare, signal);
    await withDatabase(service, dataFolder, lock, (database) => serve(service, { database, dataFolder, lock, host }));
  } finally {
    lock.release();
  }
}

/** @param {string} dataFolder */
function lockData(dataFolder) {
  makeDataFolder(dataFolder);
  const taken = takeLock(path.join(dataFolder, "start.lock"));
  if ("lock" in taken) return taken.lock;
  const { holder, address } = taken.heldBy;
  const where = address === undefined ? "still coming up" : `at ${address}`;
  throw new StartFailure(
    `Cornerway already runs from this clone (${where}, process ${holder.pid}): use that one, or end it first.`,
  );
}

/**
 * @param {ServiceParts & Asked} service
 * @param {string} dataFolder
 * @param {import("./folder-lock.mjs").FolderLock} lock
 * @param {(database: import("../src/database/index.ts").RunningPostgres) => Promise<void>} work
 */
async function withDatabase(service, dataFolder, lock, work) {
  const database = await openDatabase({ ...service, dataFolder });
  try {
    lock.note({ ownerUrl: database.ownerUrl, serviceUrl: database.serviceUrl });
    service.signal.throwIfAborted();
    await work(database);
  } finally {
    await database.stop();
  }
}

/**
 * @param {ServiceParts & Asked} service
 * @param {{ database: import("../src/database/index.ts").RunningPostgres, dataFolder: string,
 *           lock: import("./folder-lock.mjs").FolderLock, host: string }} place
 */
async function serve({ environment, signal, serverWords, seedWords, beside }, { database, dataFolder, lock, host }) {
  // The demo's passwords are public: a database that someone gives holds no demo unless they ask for it.
  const own = Boolean(environment["DATABASE_URL"]);
  const signIns = own ? [] : (await seedDemo({ words: seedWords, database, environment, signal })).signIns;
  const port = await choosePort(environment, host);
  const address = addressOf(host, port);
  const server = await superviseServer({
    words: serverWords,
    env: {
      MAIL_FOLDER: path.join(dataFolder, "mail"),
      PUBLIC_URL: address,
      ...(environment["SECRETS_KEY_FILE"] ? {} : { SECRETS_KEY: keptSecretsKey(dataFolder) }),
      ...environment,
      ...{ HOST: host, PORT: String(port), DATABASE_URL: database.serviceUrl },
    },
    readyUrl: `${address}/ready`,
    logFile: path.join(dataFolder, "server.log"),
    lifeline: database.lifeline,
    onLaunch: (pid) => lock.note({ workers: [processLife(pid)], address }),
    onFirstLink: (link) =>
      say(`Nobody is known here yet. The first administrator comes by this link, once:\n  ${link}`),
  });
  let extra;
  try {
    extra = await beside?.(address, dataFolder);
    for (const line of [
      `Cornerway is at ${address}`,
      ...signInLines(signIns),
      ...caution(host, own),
      "Ctrl-C ends it.",
    ])
      say(line);
    await untilEnd(signal, server, database);
    say("Ending: requests in flight are finished first …");
  } finally {
    await extra?.stop();
    await server.stop();
  }
}

/**
 * @param {string} host
 * @param {boolean} own true where the demo was not made
 * @returns {string[]}
 */
function caution(host, own) {
  return isOpenToNetwork(host) && !own
    ? ["HOST opens the service to the network, and the passwords of the demo are public."]
    : [];
}

/**
 * @param {AbortSignal} signal
 * @param {import("./supervise-server.mjs").RunningServer} server
 * @param {import("../src/database/index.ts").RunningPostgres} database
 */
async function untilEnd(signal, server, database) {
  const asked = signal.aborted ? Promise.resolve() : once(signal, "abort");
  const why = await Promise.race([
    asked.then(() => "asked"),
    server.ended.then(() => "server"),
    database.ended.then(() => "database"),
  ]);
  if (why === "server")
    throw new StartFailure(
      `The server ended by itself (${server.lastWords()}): see server.log in the data folder and start again.`,
    );
  if (why === "database")
    throw new StartFailure("The database ended by itself: see postgres.log in the data folder and start again.");
}
