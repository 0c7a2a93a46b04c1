import { readAnalyticalModel, solveFrame } from "@cornerway/engine";
import { badInput, type Answer } from "./answer.ts";
import { commandWords } from "./command-words.ts";
import { readInput } from "./read-input.ts";

/** `frame model.json`; undefined for other words. */
export async function frameAnswer(words: readonly string[]): Promise<Answer | undefined> {
  const asked = commandWords(words, {});
  if (asked === undefined) return undefined;
  const input = await readInput(asked.file);
  return input.ok ? frameCommand(input.name, input.value) : input.answer;
}

/** Solves every combination of a line model in the exchange format and prints the answers as JSON; N, mm, radians. */
function frameCommand(name: string, value: unknown): Answer {
  const reading = readAnalyticalModel(value);
  if (!reading.ok) return badInput(name, [{ pointer: reading.path, detail: reading.message }]);
  return { out: `${JSON.stringify(solveFrame(reading.model), null, 2)}\n`, err: "", code: 0 };
}
