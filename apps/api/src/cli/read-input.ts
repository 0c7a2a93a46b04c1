import { readFile } from "node:fs/promises";
import { text } from "node:stream/consumers";
import { badInput, type Answer } from "./answer.ts";

export type Input =
  | { readonly ok: true; readonly name: string; readonly value: unknown }
  | { readonly ok: false; readonly answer: Answer };

export type InputText =
  { readonly ok: true; readonly name: string; readonly text: string } | { readonly ok: false; readonly answer: Answer };

/** The text of a file, or of standard input for `-`. */
export async function readText(file: string): Promise<InputText> {
  const name = file === "-" ? "standard input" : file;
  const source = await sourceOf(file);
  if ("missing" in source) return { ok: false, answer: badInput(name, [{ pointer: "", detail: source.missing }]) };
  return { ok: true, name, text: source.text };
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

async function sourceOf(file: string): Promise<{ text: string } | { missing: string }> {
  if (file === "-") return { text: await text(process.stdin) };
  try {
    return { text: await readFile(file, "utf8") };
  } catch (error) {
    return { missing: `cannot be read: ${error instanceof Error ? error.message : String(error)}` };
  }
}
