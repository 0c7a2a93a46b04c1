import { DatabaseTrouble } from "./database-trouble.ts";

/** Names the cause behind what PostgreSQL or one of its programs wrote. */
export function postgresTrouble(output: string, cause?: unknown): DatabaseTrouble {
  // Texts of ENOSPC and EDQUOT in the C locale, in which the programs run, and PostgreSQL's own hint after a short write.
  if (/No space left on device|Disk quota exceeded|Check free disk space/.test(output))
    return new DatabaseTrouble("disk-full", lastLine(output), cause);
  return new DatabaseTrouble("did-not-start", lastLine(output), cause);
}

function lastLine(output: string): string {
  const lines = output.split("\n").filter((line) => line.trim() !== "");
  return lines.findLast((line) => /FATAL|ERROR|PANIC|error/.test(line)) ?? lines.at(-1) ?? "no output";
}
