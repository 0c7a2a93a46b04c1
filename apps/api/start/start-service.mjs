import path from "node:path";
import { CLONE } from "./clone.mjs";
import { prepareBuilt } from "./prepare-built.mjs";
import { runCommand } from "./run-command.mjs";
import { runService } from "./run-service.mjs";

const DIST = path.join(CLONE, "apps/api/dist");

/** The whole of `npm start`, down to the exit status of the process. */
export function main() {
  return runCommand((signal) => runService({ environment: process.env, signal, ...BUILT }));
}

/** @type {import("./run-service.mjs").ServiceParts} */
const BUILT = {
  prepare: prepareBuilt,
  loadDatabase: () => import(path.join(DIST, "database/index.js")),
  serverWords: [path.join(DIST, "server.js")],
  seedWords: [path.join(DIST, "seed.js")],
};
