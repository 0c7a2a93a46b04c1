import { readAnalyticalModel, solveFrame } from "@cornerway/engine";
import { badInput, type Answer } from "./answer.ts";

/** Solves every combination of a line model in the exchange format and prints the answers as JSON; N, mm, radians. */
export function frameCommand(name: string, value: unknown): Answer {
  const reading = readAnalyticalModel(value);
  if (!reading.ok) return badInput(name, [{ pointer: reading.path, detail: reading.message }]);
  return { out: `${JSON.stringify(solveFrame(reading.model), null, 2)}\n`, err: "", code: 0 };
}
