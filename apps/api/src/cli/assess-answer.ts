import type { Answer } from "./answer.ts";
import { assessCommand } from "./assess-command.ts";
import { commandWords, flag } from "./command-words.ts";
import { modelCommand } from "./model-command.ts";
import { readInput } from "./read-input.ts";

/** `assess scheme.json [--text] [--load-path]` or `assess scheme.json --model`; undefined for other words. */
export async function assessAnswer(words: readonly string[]): Promise<Answer | undefined> {
  const asked = commandWords(words, { text: flag, model: flag, "load-path": flag });
  if (asked === undefined) return undefined;
  const { text: asText = false, model = false, "load-path": loadPathOnly = false } = asked.said;
  if (model && (asText || loadPathOnly)) return undefined;
  const input = await readInput(asked.file);
  if (!input.ok) return input.answer;
  return model
    ? modelCommand(input.name, input.value)
    : assessCommand(input.name, input.value, { asText, loadPathOnly });
}
