import { explainTrouble } from "./explain-trouble.mjs";
import { StartFailure, Stopped } from "./start-failure.mjs";
import { watchForStop } from "./watch-for-stop.mjs";

const ENDED_BY_CTRL_C = 130; // 128 + SIGINT, as shells report it

/**
 * Runs a command of this folder to the end of the process: one line for a failure the user can mend, a trace for a fault of ours.
 * @param {(signal: AbortSignal) => Promise<number | void>} command resolves with the exit status where that is not 0
 */
export async function runCommand(command) {
  // The terminal may be gone before we are; that must not cut short an orderly end.
  for (const stream of [process.stdout, process.stderr]) stream.on("error", () => undefined);
  const signal = watchForStop(process.env);
  process.exitCode = await exitStatus(command, signal);
  process.exit();
}

/**
 * @param {(signal: AbortSignal) => Promise<number | void>} command
 * @param {AbortSignal} signal
 */
async function exitStatus(command, signal) {
  try {
    return (await command(signal)) ?? 0;
  } catch (caught) {
    const error = explainTrouble(caught);
    const mendable = error instanceof StartFailure;
    // Ctrl-C also ends the programs a step runs, and what they then complain of is no news.
    if (error instanceof Stopped || (mendable && signal.aborted) || isEndedByCtrlC(caught)) return ENDED_BY_CTRL_C;
    console.error(mendable ? error.message : error);
    return 1;
  }
}

/**
 * A program we waited for was ended by Ctrl-C, which this process hears only afterwards.
 * @param {unknown} caught
 */
const isEndedByCtrlC = (caught) => caught instanceof Error && "signal" in caught && caught.signal === "SIGINT";
