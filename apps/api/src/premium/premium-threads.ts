import { Premium, type CostBook, type Mark, type Scheme } from "@cornerway/schema";
import { ThreadPool, type Heard } from "../assessment/thread-pool.ts";

/** What is priced; `marks` is null where nothing is assessed. */
export interface ToPrice {
  scheme: Scheme;
  book: CostBook;
  marks: readonly Mark[] | null;
}

const entry = new URL(import.meta.url.endsWith(".ts") ? "./premium-worker.ts" : "./premium-worker.js", import.meta.url);

/** One thread is enough: a premium is asked for by few, takes milliseconds and is remembered. It never holds the process. */
const pool = new ThreadPool<ToPrice, Premium>({ threads: 1, limitMs: 30_000, entry, hear, holdsProcess: false });

/** The premium of a scheme, worked out in a thread of its own; throws where the engine gives none. */
export async function priced(task: ToPrice): Promise<Premium> {
  const settled = await pool.run(task);
  if (settled.ok) return settled.answer;
  throw new Error(`the premium could not be worked out: ${settled.why}`);
}

function hear(message: unknown): Heard<Premium> {
  const said = Premium.safeParse(message);
  return said.success ? { kind: "answer", answer: said.data } : null;
}
