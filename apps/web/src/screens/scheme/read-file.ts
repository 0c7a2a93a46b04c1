import { readSchemeFile } from "@cornerway/schema";
import type { Scheme } from "@cornerway/schema";

export interface FileFault {
  pointer: string;
  detail: string;
}

export type ReadFile = { ok: true; scheme: Scheme } | { ok: false; faults: readonly FileFault[] };

const mostBytes = 4 * 1024 * 1024;
const mostFaults = 8;

/** The scheme that a file holds, or what is wrong with it and where; at most the first few. */
export async function readFile(file: Pick<File, "size" | "text">): Promise<ReadFile> {
  if (file.size > mostBytes) return fault("it is larger than 4 MB");
  let value: unknown;
  try {
    value = JSON.parse(await file.text());
  } catch (error) {
    return fault(error instanceof SyntaxError ? "it is not JSON" : "it cannot be read");
  }
  const read = readSchemeFile(value);
  if (read.ok) return read;
  const more = read.fields.length - mostFaults;
  const shown = read.fields.slice(0, mostFaults);
  return { ok: false, faults: more > 0 ? [...shown, { pointer: "", detail: `and ${more} more` }] : shown };
}

const fault = (detail: string): ReadFile => ({ ok: false, faults: [{ pointer: "", detail }] });
