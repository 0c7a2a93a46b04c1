import { cpSync, mkdirSync, readdirSync, symlinkSync } from "node:fs";
import path from "node:path";

const CLONE = path.resolve(import.meta.dirname, "../../..");

/**
 * A folder that holds what the image's last stage copies and nothing else of the clone. Installed packages are linked,
 * but for those of the clone itself, so that a file left out of the image is missing here too.
 */
export function imageFolder(folder: string, copied: readonly string[]): void {
  for (const from of copied) {
    const to = path.join(folder, from);
    mkdirSync(path.dirname(to), { recursive: true });
    if (from.endsWith("node_modules")) linkAll(path.join(CLONE, from), to);
    else cpSync(path.join(CLONE, from), to, { recursive: true });
  }
  const own = path.join(folder, "node_modules/@cornerway");
  mkdirSync(own, { recursive: true });
  for (const name of ["schema", "engine"]) symlinkSync(path.join(folder, "packages", name), path.join(own, name));
}

function linkAll(from: string, to: string): void {
  mkdirSync(to, { recursive: true });
  for (const name of readdirSync(from))
    if (name !== "@cornerway") symlinkSync(path.join(from, name), path.join(to, name));
}
