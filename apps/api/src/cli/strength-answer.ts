import type { Answer } from "./answer.ts";
import { commandWords, flag, text } from "./command-words.ts";
import { readInput } from "./read-input.ts";
import { strengthCommand } from "./strength-command.ts";

/** `strength scheme.json [--hazards hazards.json] [--text]`; undefined for other words. */
export async function strengthAnswer(words: readonly string[]): Promise<Answer | undefined> {
  const asked = commandWords(words, { hazards: text, text: flag });
  if (asked === undefined) return undefined;
  const { hazards: site, text: asText = false } = asked.said;
  if (asked.file === "-" && site === "-") return undefined; // standard input is read once
  const scheme = await readInput(asked.file);
  if (!scheme.ok) return scheme.answer;
  const hazards = site === undefined ? undefined : await readInput(site);
  if (hazards?.ok === false) return hazards.answer;
  return strengthCommand(scheme, hazards, asText);
}
