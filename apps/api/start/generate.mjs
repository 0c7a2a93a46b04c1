import { existsSync } from "node:fs";
import path from "node:path";
import { CLONE } from "./clone.mjs";

/** The words that write the database client from prisma/schema.prisma. */
export function generateWords() {
  return [process.execPath, path.join(CLONE, "node_modules/prisma/build/index.js"), "generate"];
}

/**
 * Generating needs no native schema engine, yet looks for one and would fetch it; any program that ends well in its
 * place satisfies it. The setting in the environment wins.
 * @param {NodeJS.ProcessEnv} environment
 */
export function generateEnvironment(environment) {
  const standIn = ["/bin/true", "/usr/bin/true"].find((program) => existsSync(program)) ?? process.execPath;
  return {
    PRISMA_SCHEMA_ENGINE_BINARY: standIn,
    PRISMA_HIDE_UPDATE_MESSAGE: "1",
    CHECKPOINT_DISABLE: "1",
    ...environment,
  };
}
