import { parentPort } from "node:worker_threads";
import type { AskPosted } from "../../src/strength/share-elsewhere.ts";
import { strengthHelper } from "../../src/strength-helper.ts";

let answer = strengthHelper();
parentPort?.on("message", (posted: AskPosted | "forget") => {
  if (posted === "forget") answer = strengthHelper();
  else parentPort?.postMessage(answer(posted));
});
