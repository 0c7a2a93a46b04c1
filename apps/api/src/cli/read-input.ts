import { readFile } from "node:fs/promises";
import { buffer } from "node:stream/consumers";
import { badInput, type Answer } from "./answer.ts";

export type Input =
  | { readonly ok: true; readonly name: string; readonly value: unknown }
  | { readonly ok: false; readonly answer: Answer };

export type InputText =
  { readonly ok: true; readonly name: string; readonly text: string } | { readonly ok: false; readonly answer: Answer };

export type InputBytes =
  | { readonly ok: true; readonly name: string; readonly bytes: Buffer }
  | { readonly ok: false; readonly answer: Answer };

/** The bytes of a file, or of standard input for `-`. */
export async function readBytes(file: string): Promise<InputBytes> {
  const name = file === "-" ? "standard input" : file;
  const source = await sourceOf(file);
  if ("missing" in source) return { ok: false, answer: badInput(name, [{ pointer: "", detail: source.missing }]) };
  return { ok: true, name, bytes: source.bytes };
}

/** The text of a file, or of standard input for `-`. */
export async function readText(file: string): Promise<InputText> {
  const read = await readBytes(file);
  return read.ok ? { ok: true, name: read.name, text: read.bytes.toString("utf8") } : read;
}

/** The JSON of a file, or of standard input for `-`. */
export async function readInput(file: string): Promise<Input> {
  const source = await readText(file);
  if (!source.ok) return source;
  const { name } = source;
  try {
    const value: unknown = JSON.parse(source.text);
    return { ok: true, name, value };
  } catch (error) {
    const detail = `is not JSON: ${error instanceof Error ? error.message : String(error)}`;
    return { ok: false, answer: badInput(name, [{ pointer: "", detail }]) };
  }
}

async function sourceOf(file: string): Promise<{ bytes: Buffer } | { missing: string }> {
  if (file === "-") return { bytes: await buffer(process.stdin) };
  try {
    return { bytes: await readFile(file) };
  } catch (error) {
    return { missing: `cannot be read: ${error instanceof Error ? error.message : String(error)}` };
  }
}
