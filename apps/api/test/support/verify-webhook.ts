import { readFileSync } from "node:fs";
import path from "node:path";

const page = readFileSync(path.resolve(import.meta.dirname, "../../API.md"), "utf8");
const sample = /```js\n([\s\S]+?)```/.exec(page)?.[1] ?? "";

type Verify = (secret: string, signature: string, body: string, nowMs: number) => boolean;

/** The code sample of API.md itself, run as it stands there. */
const { verifyWebhook } = (await import(/* @vite-ignore */ `data:text/javascript,${encodeURIComponent(sample)}`)) as {
  verifyWebhook: Verify;
};

export { verifyWebhook };
