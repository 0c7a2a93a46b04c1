import { collectionNames, elementById, emptyScheme, readScheme, referencesOf, type Scheme } from "@cornerway/schema";
import { z } from "zod";
import { wholeGroup } from "./chosen-group.ts";
import { padsUnder } from "./pads-under.ts";

/** Things carried from scheme to scheme: those that were chosen, in a scheme that holds them and what they hang on. */
export interface CarriedGroup {
  chosen: readonly string[];
  scheme: Scheme;
}

const format = "cornerway-group";

const Envelope = z.strictObject({
  format: z.literal(format),
  chosen: z.array(z.string()).min(1),
  scheme: z.unknown(),
});

/** The chosen things as text for the clipboard. Site and design basis are the project's own and stay where they are. */
export function carriedText(scheme: Scheme, ids: readonly string[]): string {
  const carried = new Set([...wholeGroup(scheme, ids), ...padsUnder(scheme, new Set(ids)).all.map(({ id }) => id)]);
  // a set grows while it is walked: what the things hang on, and what that hangs on
  for (const id of carried) {
    const element = elementById(scheme, id);
    for (const reference of element === undefined ? [] : referencesOf(element)) carried.add(reference.id);
  }
  const lists = collectionNames.map((name) => [name, scheme[name].filter(({ id }) => carried.has(id))]);
  return JSON.stringify({ format, chosen: ids, scheme: { ...emptyScheme, ...Object.fromEntries(lists) } });
}

/** What a text of the clipboard holds, or why nothing of it can be drawn. */
export function readCarried(text: string): CarriedGroup | { cannot: string } {
  const envelope = Envelope.safeParse(jsonOf(text));
  if (!envelope.success) return { cannot: "The clipboard holds nothing that was copied from a sheet." };
  const read = readScheme(envelope.data.scheme);
  if (!read.ok) {
    const faults = read.fields.map(({ pointer, detail }) => `${pointer} ${detail}`);
    return { cannot: `What was copied cannot be drawn here: ${faults.slice(0, 1).join("")}.` };
  }
  const { chosen } = envelope.data;
  const missing = chosen.find((id) => elementById(read.scheme, id) === undefined);
  if (missing !== undefined) return { cannot: `What was copied is not whole: ${missing} is missing.` };
  return { chosen, scheme: read.scheme };
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
}
