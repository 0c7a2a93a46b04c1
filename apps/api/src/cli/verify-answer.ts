import { SignedHead } from "@cornerway/schema";
import type { KnownOutside } from "../record/verify-bundle.ts";
import { badInput, type Answer } from "./answer.ts";
import { commandWords, text } from "./command-words.ts";
import { readBytes, readText } from "./read-input.ts";
import { verifyArchive, verifyCommand } from "./verify-command.ts";

/** `verify bundle.json|archive.zip [--key fingerprint] [--head number:head or head.json]`; undefined when the words are not that. */
export async function verifyAnswer(words: readonly string[]): Promise<Answer | undefined> {
  const asked = commandWords(words, { key: text, head: text });
  if (asked === undefined) return undefined;
  const { key: fingerprint, head: headWord } = asked.said;
  if ((fingerprint !== undefined && !/^[0-9a-f]{64}$/.test(fingerprint)) || headWord === "") return undefined;
  const head = headWord === undefined ? { ok: true as const, head: undefined } : await headOf(headWord);
  if (!head.ok) return head.answer;
  const source = await readBytes(asked.file);
  if (!source.ok) return source.answer;
  const known: KnownOutside = {
    ...(fingerprint !== undefined && { fingerprint }),
    ...(head.head !== undefined && { head: head.head }),
  };
  const { name, bytes } = source;
  return isZip(bytes) ? verifyArchive(name, bytes, known) : verifyCommand(name, bytes.toString("utf8"), known);
}

/** How every ZIP begins: APPNOTE 6.3, 4.3.7. */
const isZip = (bytes: Buffer): boolean => bytes.subarray(0, 4).toString("latin1") === "PK\u0003\u0004";

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
