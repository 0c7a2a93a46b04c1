import { schemeModel } from "@cornerway/engine";
import { readScheme } from "@cornerway/schema";
import { badInput, type Answer } from "./answer.ts";

/**
 * The line model of a scheme under what is drawn on it, in the exchange format that `frame` reads. What the model leaves out
 * is told on standard error.
 */
export function modelCommand(name: string, value: unknown): Answer {
  const read = readScheme(value);
  if (!read.ok) return badInput(name, read.fields);
  const { model, notes } = schemeModel(read.scheme);
  const told = notes.map(({ kind, ...on }) => `note: ${kind}: ${Object.values(on).join(", ")}\n`);
  return { out: `${JSON.stringify(model)}\n`, err: told.join(""), code: 0 };
}
