import { spawn } from "node:child_process";
import path from "node:path";

const root = path.resolve(import.meta.dirname, "../../..");

/** The pages as they are served: packages compiled, then the production build, written to `folder`. */
export async function buildPages(folder: string): Promise<void> {
  await run(["node_modules/typescript/bin/tsc", "-b", "packages/engine"], root);
  await run(
    [path.join(root, "node_modules/vite/bin/vite.js"), "build", "--outDir", folder, "--emptyOutDir"],
    path.join(root, "apps/web"),
  );
}

function run(words: string[], cwd: string): Promise<void> {
  const child = spawn(process.execPath, words, {
    cwd,
    stdio: ["ignore", "pipe", "pipe"],
    env: { ...process.env, NODE_ENV: "production" },
  });
  let output = "";
  for (const stream of [child.stdout, child.stderr]) stream.on("data", (part) => (output += String(part)));
  return new Promise((resolve, reject) => {
    child.once("error", reject);
    child.once("close", (code) =>
      code === 0 ? resolve() : reject(new Error(`${words.join(" ")} ended with ${code}:\n${output}`)),
    );
  });
}
