import type { Answer } from "./answer.ts";
import { commandWords, flag, text } from "./command-words.ts";
import { readInput } from "./read-input.ts";
import { remediesCommand } from "./remedies-command.ts";

/** `remedies scheme.json [--mark tips-over:t1] [--json]`; without a mark, those that something is known for. Undefined for other words. */
export async function remediesAnswer(words: readonly string[]): Promise<Answer | undefined> {
  const asked = commandWords(words, { mark: text, json: flag });
  if (asked === undefined) return undefined;
  const { mark, json = false } = asked.said;
  const input = await readInput(asked.file);
  return input.ok ? remediesCommand(input, mark, json) : input.answer;
}
