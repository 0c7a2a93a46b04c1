import { commandAnswer } from "./cli/command-answer.ts";

/**
 * The command line. Writes the answer to standard output and what is wrong with the input to standard error. Returns 0
 * assessed, 1 bad input, 2 internal.
 */
export async function runCommand(words: readonly string[]): Promise<number> {
  try {
    const { out, err, code } = await commandAnswer(words);
    if (out !== "") await written(process.stdout, out);
    if (err !== "") await written(process.stderr, err);
    return code;
  } catch (error) {
    await written(process.stderr, `cornerway: internal: ${error instanceof Error ? error.message : String(error)}\n`);
    return 2;
  }
}

/** A reader that has seen enough and closed its end, as `head` does, is no fault: the rest is not wanted. */
const written = (stream: NodeJS.WriteStream, text: string): Promise<void> =>
  new Promise((resolve, reject) => {
    const end = (error: NodeJS.ErrnoException | null | undefined): void =>
      error && error.code !== "EPIPE" ? reject(error) : resolve();
    stream.once("error", end); // the stream tells of a closed pipe twice: here and to the write
    stream.write(text, end);
  });
