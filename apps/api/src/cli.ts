import { assessCommand } from "./cli/assess-command.ts";
import type { Answer } from "./cli/answer.ts";
import { chartAnswer } from "./cli/chart-answer.ts";
import { frameCommand } from "./cli/frame-command.ts";
import { modelCommand } from "./cli/model-command.ts";
import { rerunAnswer } from "./cli/rerun-command.ts";
import { readInput } from "./cli/read-input.ts";
import { remediesAnswer } from "./cli/remedies-answer.ts";
import { strengthCommand } from "./cli/strength-command.ts";
import { verifyAnswer } from "./cli/verify-answer.ts";

/**
 * The command line: `assess scheme.json [--text] [--load-path]`, `frame model.json`, `strength scheme.json [--hazards hazards.json] [--text]`
 * `chart scheme.json --of F1 …`, `remedies scheme.json --mark tips-over:t1` and `verify bundle.json [--key fingerprint] [--head number:head|head.json]`; `-` reads standard input. Writes the answer
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
  if (words[0] === "strength") return strengthAnswer(words.slice(1));
  if (words[0] === "chart") return (await chartAnswer(words.slice(1))) ?? usage;
  if (words[0] === "remedies") return (await remediesAnswer(words.slice(1))) ?? usage;
  if (words[0] === "verify") return (await verifyAnswer(words.slice(1))) ?? usage;
  if (words[0] === "rerun") return (await rerunAnswer(words.slice(1))) ?? usage;
  const flags = words.filter((word) => word.startsWith("--"));
  const [command, file, ...more] = words.filter((word) => !word.startsWith("--"));
  const known = command === "assess" ? ["--text", "--model", "--load-path"] : [];
  if (file === undefined || more.length > 0 || !flags.every((flag) => known.includes(flag))) return usage;
  if (flags.includes("--model") && new Set(flags).size > 1) return usage;
  if (command !== "assess" && command !== "frame") return usage;
  const input = await readInput(file);
  if (!input.ok) return input.answer;
  if (command === "frame") return frameCommand(input.name, input.value);
  if (flags.includes("--model")) return modelCommand(input.name, input.value);
  return assessCommand(input.name, input.value, {
    asText: flags.includes("--text"),
    loadPathOnly: flags.includes("--load-path"),
  });
}

/** `--hazards` takes the word after it. */
async function strengthAnswer(words: readonly string[]): Promise<Answer> {
  const at = words.indexOf("--hazards");
  const site = at < 0 ? undefined : words[at + 1];
  if (at >= 0 && site === undefined) return usage;
  const others = words.filter((_, place) => at < 0 || (place !== at && place !== at + 1));
  const [file, ...more] = others.filter((word) => word !== "--text");
  if (file === undefined || more.length > 0 || file.startsWith("--")) return usage;
  if (file === "-" && site === "-") return usage;
  const scheme = await readInput(file);
  if (!scheme.ok) return scheme.answer;
  const hazards = site === undefined ? undefined : await readInput(site);
  if (hazards?.ok === false) return hazards.answer;
  return strengthCommand(scheme, hazards, words.includes("--text"));
}

const usage: Answer = {
  out: "",
  err: "usage: cornerway assess scheme.json [--text] [--load-path]\n       cornerway assess scheme.json --model\n       cornerway frame model.json\n       cornerway strength scheme.json [--hazards hazards.json] [--text]\n       cornerway chart scheme.json --of F1 [--face left|right|front] [--sill mm] [--height mm] [--apart mm] [--all-sets] [--csv | --json]\n       cornerway remedies scheme.json [--mark id] [--json]\n       cornerway verify bundle.json|archive.zip [--key fingerprint] [--head number:head|head.json]\n       cornerway rerun archive.zip [--revision B] [--json]\nA dash in place of the file reads standard input.\n",
  code: 1,
};

/** A reader that has seen enough and closed its end, as `head` does, is no fault: the rest is not wanted. */
const written = (stream: NodeJS.WriteStream, text: string): Promise<void> =>
  new Promise((resolve, reject) => {
    const end = (error: NodeJS.ErrnoException | null | undefined): void =>
      error && error.code !== "EPIPE" ? reject(error) : resolve();
    stream.once("error", end); // the stream tells of a closed pipe twice: here and to the write
    stream.write(text, end);
  });
