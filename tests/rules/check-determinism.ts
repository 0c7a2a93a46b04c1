// Exit status 1, with one line each, when the engine uses anything whose result may differ between machines or runs.
import { determinismBreaches } from "./determinism.ts";
import { engineSources } from "./engine-sources.ts";

const sources = engineSources();
const found = sources.flatMap(({ file, source }) =>
  determinismBreaches(source, file).map(
    ({ line, what }) => `packages/engine/src/${file}:${line}: ${what} is not allowed in the engine`,
  ),
);
for (const line of found) console.log(line);
console.log(`${sources.length} files of the engine read, ${found.length} breaches`);
process.exitCode = found.length === 0 && sources.length > 0 ? 0 : 1;
