import { runStep } from "./run-step.mjs";
import { StartFailure } from "./start-failure.mjs";

/**
 * @typedef {{ name: string, role: string, email: string, password: string }} SignIn
 */

/**
 * @typedef {object} Seeded
 * @property {SignIn[]} signIns
 * @property {"made" | "erased and made anew" | "left as it was"} what
 * @property {number} entriesBefore entries of the record that was there
 */

/**
 * Has the demo project made where it is missing and returns who may sign in to it. Repeated, it changes nothing, unless
 * the words ask for a reset.
 * @param {object} plan
 * @param {string[]} plan.words what node runs; its last line of output is a Seeded as JSON
 * @param {{ ownerUrl: string, serviceUrl: string }} plan.database
 * @param {NodeJS.ProcessEnv} plan.environment
 * @param {AbortSignal} plan.signal
 * @returns {Promise<Seeded>}
 */
export async function seedDemo({ words, database, environment, signal }) {
  // People and projects are made by the owner of the tables: the service's own role may not.
  const env = { ...environment, DATABASE_URL: database.serviceUrl, OWNER_DATABASE_URL: database.ownerUrl };
  const { ok, output, stdout } = await runStep({ name: "seed", words: [process.execPath, ...words], env, signal });
  const seeded = ok ? readSeeded(stdout) : undefined;
  if (seeded === undefined)
    throw new StartFailure(`The demo could not be made (${lastLine(output)}): see .cache/seed.log.`);
  return seeded;
}

/**
 * What was done, and who may sign in.
 * @param {Seeded} seeded
 * @returns {string[]}
 */
export const seededLines = ({ what, entriesBefore, signIns }) => [
  ...told[what](entriesBefore),
  ...signInLines(signIns),
];

/** @type {Record<Seeded["what"], (entries: number) => string[]>} */
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

/**
 * @param {SignIn[]} signIns
 * @returns {string[]} one line each, in columns
 */
export function signInLines(signIns) {
  if (signIns.length === 0) return [];
  const width = (/** @type {"role" | "name" | "email"} */ key) =>
    Math.max(...signIns.map((signIn) => signIn[key].length));
  const [role, name, email] = [width("role"), width("name"), width("email")];
  const row = (/** @type {SignIn} */ one) =>
    `  ${one.role.padEnd(role)}  ${one.name.padEnd(name)}  ${one.email.padEnd(email)}  ${one.password}`;
  return ["Sign-ins of the demo (role, name, address, password):", ...signIns.map(row)];
}

/**
 * @param {string} stdout
 * @returns {Seeded | undefined}
 */
function readSeeded(stdout) {
  const line = stdout.split("\n").findLast((text) => text.startsWith('{"signIns"'));
  return line === undefined ? undefined : JSON.parse(line);
}

/** @param {string} output */
function lastLine(output) {
  return (
    output
      .trimEnd()
      .split("\n")
      .findLast((line) => /error/i.test(line)) ??
    output.trimEnd().split("\n").at(-1) ??
    "no output"
  ).trim();
}
