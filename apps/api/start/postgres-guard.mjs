// Runs beside the embedded database server. Standard input is the lifeline: it ends when the last process that holds
// the other end is gone, by whatever way. Then the server is ended cleanly if it still runs.
import { rmSync } from "node:fs";
import { setTimeout as pause } from "node:timers/promises";
import { isAlive, processLife } from "./process-life.mjs";

const LOOK_AGAIN_MS = 50;

const [pidWord, removeFolder] = process.argv.slice(2);
const server = processLife(Number(pidWord));

process.stdin.resume();
await new Promise((resolve) => process.stdin.once("close", resolve));
if (isAlive(server)) process.kill(server.pid, "SIGINT");
while (isAlive(server)) await pause(LOOK_AGAIN_MS);
if (removeFolder !== undefined) rmSync(removeFolder, { recursive: true, force: true });
