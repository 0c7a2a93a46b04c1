import { readFileSync, readdirSync } from "node:fs";
import path from "node:path";

const ENGINE = path.resolve(import.meta.dirname, "../../packages/engine/src");

/** Every source file of the engine, with its path from the engine's folder. */
export function engineSources(): { file: string; source: string }[] {
  return readdirSync(ENGINE, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .sort()
    .map((file) => ({ file, source: readFileSync(path.join(ENGINE, file), "utf8") }));
}
