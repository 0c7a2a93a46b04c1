// The real start (lock, database, seeding, supervision, orderly end) around the slow server, without installing or building.
import path from "node:path";
import { register } from "tsx/esm/api";
import { runCommand } from "../../../apps/api/start/run-command.mjs";
import { runService } from "../../../apps/api/start/run-service.mjs";

register();
const here = (name) => path.join(import.meta.dirname, name);

await runCommand((signal) =>
  runService({
    environment: process.env,
    signal,
    prepare: async () => undefined,
    loadDatabase: () => import("../../../apps/api/src/database/index.ts"),
    migrationsFolder: here("migrations"),
    serverWords: [here("slow-server.mjs")],
    seedWords: ["-e", `console.log('{"signIns":[]}')`],
  }),
);
