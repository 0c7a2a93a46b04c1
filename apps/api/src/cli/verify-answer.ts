import { parseArgs } from "node:util";
import { SignedHead } from "@cornerway/schema";
import type { KnownOutside } from "../record/verify-bundle.ts";
import { badInput, type Answer } from "./answer.ts";
import { readBytes, readText } from "./read-input.ts";
import { verifyArchive, verifyCommand } from "./verify-command.ts";

type Words = { file: string; key: string | undefined; head: string | undefined };

/** `verify bundle.json|archive.zip [--key fingerprint] [--head number:head or head.json]`; undefined when the words are not that. */
export async function verifyAnswer(words: readonly string[]): Promise<Answer | undefined> {
  const asked = wordsOf(words);
  if (asked === undefined) return undefined;
  const head = asked.head === undefined ? { ok: true as const, head: undefined } : await headOf(asked.head);
  if (!head.ok) return head.answer;
  const source = await readBytes(asked.file);
  if (!source.ok) return source.answer;
  const known: KnownOutside = {
    ...(asked.key !== undefined && { fingerprint: asked.key }),
    ...(head.head !== undefined && { head: head.head }),
  };
  const { name, bytes } = source;
  return isZip(bytes) ? verifyArchive(name, bytes, known) : verifyCommand(name, bytes.toString("utf8"), known);
}

/** How every ZIP begins: APPNOTE 6.3, 4.3.7. */
const isZip = (bytes: Buffer): boolean => bytes.subarray(0, 4).toString("latin1") === "PK\u0003\u0004";

function wordsOf(words: readonly string[]): Words | undefined {
  const { values, positionals } = parseArgs({
    args: [...words],
    options: { key: { type: "string" }, head: { type: "string" } },
    allowPositionals: true,
    strict: false,
  });
  const [file, ...more] = positionals;
  const { key, head, ...others } = values;
  if (file === undefined || more.length > 0 || Object.keys(others).length > 0) return undefined;
  if (key !== undefined && !/^[0-9a-f]{64}$/.test(String(key))) return undefined;
  if (typeof head === "boolean" || head === "") return undefined;
  return { file, key: key === undefined ? undefined : String(key), head };
}

/** A head as `number:head`, or the file of a signed one as the service gives it. */
async function headOf(
  word: string,
): Promise<{ ok: true; head: NonNullable<KnownOutside["head"]> } | { ok: false; answer: Answer }> {
  const [, number, hash] = /^([1-9][0-9]{0,8}):([0-9a-f]{64})$/.exec(word) ?? [];
  if (hash !== undefined) return { ok: true, head: { number: Number(number), head: hash } };
  const source = await readText(word);
  if (!source.ok) return source;
  const parsed = SignedHead.safeParse(readJson(source.text));
  if (parsed.success) return { ok: true, head: parsed.data };
  const detail = "is no signed head as the service gives it; a head may be said as number:head as well";
  return { ok: false, answer: badInput(source.name, [{ pointer: "", detail }]) };
}

function readJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined; // which is no signed head either
  }
}
