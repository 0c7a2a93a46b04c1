// The real start and the real service from its sources, without installing or building.
import path from "node:path";
import { register } from "tsx/esm/api";
import { runCommand } from "../../../apps/api/start/run-command.mjs";
import { runService } from "../../../apps/api/start/run-service.mjs";

register();
const API = path.resolve(import.meta.dirname, "../../../apps/api/src");
const fromSource = (file) => ["--conditions=development", "--import", "tsx", path.join(API, file)];

await runCommand((signal) =>
  runService({
    environment: process.env,
    signal,
    prepare: async () => undefined,
    loadDatabase: () => import("../../../apps/api/src/database/index.ts"),
    serverWords: fromSource("server.ts"),
    seedWords: fromSource("seed.ts"),
  }),
);
