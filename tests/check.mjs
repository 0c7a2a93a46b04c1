// `npm run check`: lint, layers, determinism and types, without the suites.
import { runCommand } from "../apps/api/start/run-command.mjs";
import { generateClient } from "../apps/api/start/build.mjs";
import { ensureInstalled } from "../apps/api/start/install.mjs";
import { prepareClone } from "../apps/api/start/prepare-clone.mjs";
import { StartFailure } from "../apps/api/start/start-failure.mjs";
import { runChecks } from "./runner/checks.mjs";

await runCommand(async (signal) => {
  await prepareClone(async (control) => {
    await ensureInstalled(control);
    await generateClient(control);
  }, signal);
  const failed = (await runChecks(signal)).filter((tally) => tally.failed > 0);
  if (failed.length > 0) throw new StartFailure(`Failed: ${failed.map(({ name }) => name).join(", ")}`);
});
