import path from "node:path";

/** Root folder of this clone. */
export const CLONE = path.resolve(import.meta.dirname, "../../..");

/** Folder for what can be made again at any time: step logs, build stamp. */
export const CACHE = path.join(CLONE, ".cache");
