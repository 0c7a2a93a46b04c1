// `npm start`. Runs before anything is installed, so neither this file nor what it imports may need a package.
import { requireNode } from "./node-version.mjs";

requireNode(process.versions.node);
// Imported only now: the rest uses what older versions of Node lack.
const { main } = await import("./start-service.mjs");
await main();
