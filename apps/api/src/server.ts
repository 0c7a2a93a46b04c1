import { buildApp } from "./app.ts";
import { readConfig } from "./config.ts";
import { runUntilTold } from "./run-until-told.ts";
import { tellFirstLink } from "./tell-first-link.ts";

const config = readConfig(process.env);
const app = await buildApp(config);
await runUntilTold(app, config);
await tellFirstLink(app);
