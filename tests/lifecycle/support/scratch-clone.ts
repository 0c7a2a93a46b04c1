import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { createHash } from "node:crypto";
import { execFileSync } from "node:child_process";
import os from "node:os";
import path from "node:path";

/** A clone that holds the start and one small package to install, and nothing else. */
export interface ScratchClone {
  folder: string;
  /** Bytes of the package, as a registry would send them. */
  archive: Buffer;
  /** Words that install and then say "installed". */
  installWords: string[];
  remove(): void;
}

const START = path.resolve(import.meta.dirname, "../../../apps/api/start");

const INSTALL_ONLY = `
import { ensureInstalled } from "./install.mjs";
import { prepareClone } from "./prepare-clone.mjs";
import { runCommand } from "./run-command.mjs";
await runCommand(async (signal) => {
  await prepareClone(ensureInstalled, signal);
  console.log("installed");
});
`;

export function scratchClone(): ScratchClone {
  const folder = realpathSync(mkdtempSync(path.join(os.tmpdir(), "cornerway-clone-")));
  const start = path.join(folder, "apps/api/start");
  mkdirSync(start, { recursive: true });
  for (const name of readdirSync(START)) cpSync(path.join(START, name), path.join(start, name));
  writeFileSync(path.join(start, "install-only.mjs"), INSTALL_ONLY);
  const archive = packPackage(folder);
  writeLock(folder, archive);
  const remove = () => rmSync(folder, { recursive: true, force: true });
  return { folder, archive, installWords: ["node", path.join(start, "install-only.mjs")], remove };
}

function packPackage(folder: string): Buffer {
  const source = path.join(folder, "package-source/package");
  mkdirSync(source, { recursive: true });
  writeFileSync(path.join(source, "package.json"), JSON.stringify({ name: "one-pad", version: "1.0.0" }));
  const archive = path.join(folder, "one-pad.tgz");
  execFileSync("tar", ["-czf", archive, "-C", path.dirname(source), "package"]);
  return readFileSync(archive);
}

/** Like the lock file of the real clone this one names no address, so the registry in force is asked. */
function writeLock(folder: string, archive: Buffer): void {
  const manifest = { name: "scratch", version: "1.0.0", devDependencies: { "one-pad": "1.0.0" } };
  const integrity = `sha512-${createHash("sha512").update(archive).digest("base64")}`;
  const packages = { "": manifest, "node_modules/one-pad": { version: "1.0.0", integrity, dev: true } };
  writeFileSync(path.join(folder, "package.json"), JSON.stringify(manifest));
  writeFileSync(
    path.join(folder, "package-lock.json"),
    JSON.stringify({ ...manifest, lockfileVersion: 3, requires: true, packages }),
  );
}
