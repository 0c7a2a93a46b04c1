#!/usr/bin/env node
import { existsSync } from "node:fs";

const built = new URL("../dist/cli.js", import.meta.url);
if (existsSync(built)) {
  const { runCommand } = await import(built.href);
  process.exitCode = await runCommand(process.argv.slice(2));
} else {
  process.stderr.write("cornerway is not built yet: npm run build first\n");
  process.exitCode = 2;
}
