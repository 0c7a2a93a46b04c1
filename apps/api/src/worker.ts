import { readConfig } from "./config.ts";
import { runUntilTold } from "./run-until-told.ts";
import { buildWorker } from "./worker-app.ts";

const config = readConfig(process.env);
await runUntilTold(await buildWorker(config), config);
