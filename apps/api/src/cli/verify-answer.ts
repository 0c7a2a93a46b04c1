import { parseArgs } from "node:util";
import type { KnownOutside } from "../record/verify-bundle.ts";
import type { Answer } from "./answer.ts";
import { readText } from "./read-input.ts";
import { verifyCommand } from "./verify-command.ts";

/** `verify bundle.json [--key fingerprint] [--head number:head]`; undefined when the words are not that. */
export async function verifyAnswer(words: readonly string[]): Promise<Answer | undefined> {
  const asked = wordsOf(words);
  if (asked === undefined) return undefined;
  const source = await readText(asked.file);
  return source.ok ? verifyCommand(source.name, source.text, asked.known) : source.answer;
}

function wordsOf(words: readonly string[]): { file: string; known: KnownOutside } | undefined {
  const { values, positionals } = parseArgs({
    args: [...words],
    options: { key: { type: "string" }, head: { type: "string" } },
    allowPositionals: true,
    strict: false,
  });
  const [file, ...more] = positionals;
  const { key, head, ...others } = values;
  if (file === undefined || more.length > 0 || Object.keys(others).length > 0) return undefined;
  const [, number, hash] = /^([0-9]{1,9}):([0-9a-f]{64})$/.exec(String(head)) ?? [];
  if (head !== undefined && hash === undefined) return undefined;
  if (key !== undefined && !/^[0-9a-f]{64}$/.test(String(key))) return undefined;
  return {
    file,
    known: {
      ...(key !== undefined && { fingerprint: String(key) }),
      ...(hash !== undefined && { head: { number: Number(number), head: hash } }),
    },
  };
}
