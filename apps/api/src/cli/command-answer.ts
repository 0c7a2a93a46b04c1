import type { Answer } from "./answer.ts";
import { assessAnswer } from "./assess-answer.ts";
import { chartAnswer } from "./chart-answer.ts";
import { frameAnswer } from "./frame-command.ts";
import { remediesAnswer } from "./remedies-answer.ts";
import { rerunAnswer } from "./rerun-command.ts";
import { strengthAnswer } from "./strength-answer.ts";
import { verifyAnswer } from "./verify-answer.ts";

/** Each command reads the words after its name, and gives undefined when they are not those it takes. */
const commands = new Map<string, (words: readonly string[]) => Promise<Answer | undefined>>([
  ["assess", assessAnswer],
  ["frame", frameAnswer],
  ["strength", strengthAnswer],
  ["chart", chartAnswer],
  ["remedies", remediesAnswer],
  ["verify", verifyAnswer],
  ["rerun", rerunAnswer],
]);

const usage = `usage: cornerway assess scheme.json [--text] [--load-path]
       cornerway assess scheme.json --model
       cornerway frame model.json
       cornerway strength scheme.json [--hazards hazards.json] [--text]
       cornerway chart scheme.json --of F1 [--face left|right|front] [--sill mm] [--height mm] [--apart mm] [--all-sets] [--csv | --json]
       cornerway remedies scheme.json [--mark id] [--json]
       cornerway verify bundle.json|archive.zip [--key fingerprint] [--head number:head|head.json]
       cornerway rerun archive.zip [--revision B] [--json]
A dash in place of the file reads standard input.
`;

/** What the command line answers to its words; the usage to words it does not know. */
export async function commandAnswer([command = "", ...words]: readonly string[]): Promise<Answer> {
  return (await commands.get(command)?.(words)) ?? { out: "", err: usage, code: 1 };
}
