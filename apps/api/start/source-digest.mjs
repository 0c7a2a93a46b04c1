import { createHash } from "node:crypto";
import { readFileSync, readdirSync } from "node:fs";
import path from "node:path";

const NOT_SOURCES = new Set(["node_modules", "dist", "dist-types", "generated", "coverage", "test", "bench", "start"]);
const SOURCE_FOLDERS = ["apps", "packages", "prisma", "shared"];
const SOURCE_FILES = ["package.json", "package-lock.json", "prisma.config.ts", "tsconfig.base.json", "tsconfig.json"];

/**
 * SHA-256 over names and bytes of everything the build reads.
 * @param {string} clone
 */
export function sourceDigest(clone) {
  const hash = createHash("sha256");
  const files = [...SOURCE_FILES, ...SOURCE_FOLDERS.flatMap((folder) => filesBelow(clone, folder))];
  for (const file of files.sort())
    hash
      .update(`${file}\0`)
      .update(readFileSync(path.join(clone, file)))
      .update("\0");
  return hash.digest("hex");
}

/**
 * @param {string} clone
 * @param {string} folder
 * @returns {string[]}
 */
function filesBelow(clone, folder) {
  return readdirSync(path.join(clone, folder), { withFileTypes: true }).flatMap((entry) => {
    const place = path.posix.join(folder, entry.name);
    if (entry.isDirectory()) return NOT_SOURCES.has(entry.name) ? [] : filesBelow(clone, place);
    return entry.isFile() && !entry.name.endsWith(".tsbuildinfo") ? [place] : [];
  });
}
