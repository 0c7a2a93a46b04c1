import { parentPort } from "node:worker_threads";
import { strengthHelper, type AskPosted } from "@cornerway/engine";

// Helps the thread that started it with strength runs, and ends with it.
const answer = strengthHelper();
parentPort?.on("message", (posted: AskPosted) => parentPort?.postMessage(answer(posted)));
