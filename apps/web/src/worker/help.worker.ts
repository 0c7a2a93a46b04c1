import { strengthHelper, type AskPosted } from "@cornerway/engine";

const answer = strengthHelper();

/** Helps the strength thread with full runs, and ends with it. */
addEventListener("message", ({ data }: MessageEvent<AskPosted>) => postMessage(answer(data)));
