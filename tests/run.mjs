// `npm test`: installs what is missing, then every check and every suite; the last line is "N passed, N failed".
// Runs before anything is installed, so neither this file nor what it imports may need a package.
import { requireNode } from "../apps/api/start/node-version.mjs";

requireNode(process.versions.node);
const { runEverything } = await import("./runner/run-everything.mjs");
await runEverything();
