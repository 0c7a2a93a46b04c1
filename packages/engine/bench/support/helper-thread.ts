import { parentPort } from "node:worker_threads";
import type { AskPosted } from "../../src/strength/share-elsewhere.ts";
import { strengthHelper } from "../../src/strength-helper.ts";

const answer = strengthHelper();
parentPort?.on("message", (posted: AskPosted) => parentPort?.postMessage(answer(posted)));
