import { parseArgs } from "node:util";
import { z } from "zod";
import type { Answer } from "./answer.ts";
import { readInput } from "./read-input.ts";
import { remediesCommand } from "./remedies-command.ts";

const Asked = z.object({ mark: z.string().optional() });

/** `remedies scheme.json [--mark tips-over:t1] [--json]`; without a mark, those that something is known for. Undefined for other words. */
export async function remediesAnswer(words: readonly string[]): Promise<Answer | undefined> {
  const parsed = parsedWords(words);
  const asked = Asked.safeParse(parsed?.values);
  const [file, ...more] = parsed?.positionals ?? [];
  if (parsed === undefined || !asked.success || file === undefined || more.length > 0) return undefined;
  const input = await readInput(file);
  if (!input.ok) return input.answer;
  return remediesCommand(input, asked.data.mark, parsed.values.json === true);
}

function parsedWords(words: readonly string[]) {
  const options = { mark: { type: "string" }, json: { type: "boolean" } } as const;
  try {
    return parseArgs({ args: [...words], options, allowPositionals: true });
  } catch (error) {
    if (error instanceof TypeError) return undefined; // words it does not know
    throw error;
  }
}
