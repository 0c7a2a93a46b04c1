import { parentPort } from "node:worker_threads";
import { z } from "zod";
import { makeSet } from "./make-set.ts";
import { digestsOf } from "./permit-set.ts";
import { writePdf } from "./pdf/write-pdf.ts";
import type { ToPrint } from "./print-in-thread.ts";
import type { SetSource } from "./set-source.ts";

const tell = (message: ToPrint, moved: ArrayBuffer[] = []) => parentPort?.postMessage(message, moved);

/** What the service itself put together; its parts were read by their schemas where they came from. */
const Source = z.custom<SetSource>((value) => typeof value === "object" && value !== null && "scheme" in value);

parentPort?.once("message", (message: unknown) => void print(Source.parse(message)));

async function print(source: SetSource): Promise<void> {
  const made = makeSet(source);
  if (!made.ok) return tell({ kind: "refused", why: made.why.join("\n") });
  const { set } = made;
  const of = set.pages.length;
  tell({ kind: "pages", done: 0, of });
  const pdf = new Uint8Array(await writePdf(set, { onPage: (done) => tell({ kind: "pages", done, of }) }));
  tell({ kind: "done", setDigest: digestsOf(set).set, pages: of, pdf }, [pdf.buffer]);
}
