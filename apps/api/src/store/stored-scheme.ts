import { readScheme, type Scheme } from "@cornerway/schema";

/** A scheme as it was stored, by this version or an older one. Throws when it is no scheme: the row was not ours. */
export function storedScheme(value: unknown): Scheme {
  const read = readScheme(value);
  if (read.ok) return read.scheme;
  const places = read.fields.map(({ pointer, detail }) => `${pointer}: ${detail}`).join("; ");
  throw new Error(`a stored scheme cannot be read: ${places}`);
}
