// `npm run build`: builds API and web where the sources changed since the last build.
import { prepareBuilt } from "./prepare-built.mjs";
import { prepareClone } from "./prepare-clone.mjs";
import { runCommand } from "./run-command.mjs";

await runCommand((signal) => prepareClone(prepareBuilt, signal));
