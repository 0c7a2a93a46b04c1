import { assessCommand } from "./cli/assess-command.ts";
import type { Answer } from "./cli/answer.ts";
import { frameCommand } from "./cli/frame-command.ts";
import { readInput } from "./cli/read-input.ts";

/**
 * The command line: `assess scheme.json [--text]` and `frame model.json`; `-` reads standard input. Writes the answer
 * to standard output and what is wrong with the input to standard error. Returns 0 assessed, 1 bad input, 2 internal.
 */
export async function runCommand(words: readonly string[]): Promise<number> {
  try {
    const { out, err, code } = await answer(words);
    if (out !== "") await written(process.stdout, out);
    if (err !== "") await written(process.stderr, err);
    return code;
  } catch (error) {
    await written(process.stderr, `cornerway: internal: ${error instanceof Error ? error.message : String(error)}\n`);
    return 2;
  }
}

async function answer(words: readonly string[]): Promise<Answer> {
  const flags = words.filter((word) => word.startsWith("--"));
  const [command, file, ...more] = words.filter((word) => !word.startsWith("--"));
  const known = command === "assess" ? ["--text"] : [];
  if (file === undefined || more.length > 0 || !flags.every((flag) => known.includes(flag))) return usage;
  if (command !== "assess" && command !== "frame") return usage;
  const input = await readInput(file);
  if (!input.ok) return input.answer;
  return command === "assess"
    ? assessCommand(input.name, input.value, flags.includes("--text"))
    : frameCommand(input.name, input.value);
}

const usage: Answer = {
  out: "",
  err: "usage: cornerway assess scheme.json [--text]\n       cornerway frame model.json\nA dash in place of the file reads standard input.\n",
  code: 1,
};

const written = (stream: NodeJS.WriteStream, text: string): Promise<void> =>
  new Promise((resolve, reject) => {
    stream.write(text, (error) => (error ? reject(error) : resolve()));
  });
