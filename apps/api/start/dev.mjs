// `npm run dev`: the service from its sources, restarted when they change, with the screens served live by vite before it.
// It shares data and lock with `npm start`.
import path from "node:path";
import { choosePort } from "./choose-port.mjs";
import { CLONE } from "./clone.mjs";
import { generateEnvironment, generateWords } from "./generate.mjs";
import { ensureInstalled } from "./install.mjs";
import { runCommand } from "./run-command.mjs";
import { runService } from "./run-service.mjs";
import { runStep } from "./run-step.mjs";
import { say } from "./say.mjs";
import { StartFailure } from "./start-failure.mjs";
import { superviseServer } from "./supervise-server.mjs";

const API = path.join(CLONE, "apps/api/src");
const FROM_SOURCE = ["--conditions=development", "--import", "tsx"];

await runCommand(async (signal) => {
  await runService({
    environment: process.env,
    signal,
    prepare: async (control) => {
      await ensureInstalled(control);
      const { ok } = await runStep({
        name: "generate",
        words: generateWords(),
        env: generateEnvironment(process.env),
        ...control,
      });
      if (!ok) throw new StartFailure("The database client could not be generated: see .cache/generate.log.");
    },
    loadDatabase: async () => {
      const { register } = await import("tsx/esm/api");
      register();
      return import("../src/database/index.ts");
    },
    serverWords: ["--watch", "--watch-preserve-output", ...FROM_SOURCE, path.join(API, "server.ts")],
    seedWords: [...FROM_SOURCE, path.join(API, "seed.ts")],
    beside: (address, dataFolder) => startScreens(address, dataFolder),
  });
});

/**
 * @param {string} address of the service, to which vite passes on what the screens ask
 * @param {string} dataFolder
 */
async function startScreens(address, dataFolder) {
  const port = await choosePort({ ...process.env, PORT: "" }, "127.0.0.1");
  const screens = await superviseServer({
    words: [
      path.join(CLONE, "node_modules/vite/bin/vite.js"),
      path.join(CLONE, "apps/web"),
      "--host",
      "127.0.0.1",
      "--port",
      String(port),
      "--strictPort",
    ],
    env: { ...process.env, SERVICE_URL: address },
    readyUrl: `http://127.0.0.1:${port}/`,
    logFile: path.join(dataFolder, "screens.log"),
    lifeline: undefined,
    onLaunch: () => undefined,
  });
  say(`Screens with live reload are at http://127.0.0.1:${port}`);
  return screens;
}
