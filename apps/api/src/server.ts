import { buildApp } from "./app.ts";
import { readConfig } from "./config.ts";
import { runUntilTold } from "./run-until-told.ts";

const config = readConfig(process.env);
await runUntilTold(await buildApp(config), config);
