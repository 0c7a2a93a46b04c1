import { say } from "./say.mjs";

/**
 * Starts the database (or takes the one at DATABASE_URL) and brings its tables up to date.
 * @param {object} plan
 * @param {() => Promise<typeof import("../src/database/index.ts")>} plan.loadDatabase
 * @param {string} [plan.migrationsFolder]
 * @param {string} plan.dataFolder
 * @param {NodeJS.ProcessEnv} plan.environment
 * @returns {Promise<import("../src/database/index.ts").RunningPostgres>}
 */
export async function openDatabase({ loadDatabase, migrationsFolder, dataFolder, environment }) {
  const { startPostgres, migrate } = await loadDatabase();
  const databaseUrl = environment["DATABASE_URL"] || undefined;
  say(databaseUrl === undefined ? `Starting the database …${unproved()}` : "Using the database at DATABASE_URL …");
  const database = await startPostgres({
    dataFolder,
    databaseUrl,
    serviceDatabaseUrl: environment["SERVICE_DATABASE_URL"] || undefined,
  });
  try {
    const applied = await migrate(database.ownerUrl, migrationsFolder);
    if (applied.length > 0) say(`Tables brought up to date: ${applied.join(", ")}`);
    return database;
  } catch (error) {
    await database.stop();
    throw error;
  }
}

/** The packages for other systems are listed and have never been run. */
function unproved() {
  const system = `${process.platform}-${process.arch}`;
  return system === "linux-x64"
    ? ""
    : ` (on ${system} this has not been proved: DATABASE_URL takes a PostgreSQL of your own)`;
}
