import type { Operation } from "@cornerway/schema";
import { refuse, type Outcome } from "../outcome.ts";
import type { Connection } from "../store/connection.ts";
import { readActsThatWrote } from "../store/draft-rows.ts";
import { liveActs } from "./live-acts.ts";

const mostShown = 20;

/**
 * A conflict when any of the keys was written after draft number `after` and not taken back since; it carries what the
 * others did (the latest acts when there are many) and what was sent. Undefined when the keys are as they were.
 */
export async function draftConflict(
  tx: Connection,
  projectId: string,
  { after, keys, draftNumber, mine }: { after: number; keys: string[]; draftNumber: number; mine: Operation[] },
): Promise<Outcome<never> | undefined> {
  if (after >= draftNumber) return undefined;
  const theirs = liveActs(await readActsThatWrote(tx, projectId, { after, keys }));
  if (theirs.length === 0) return undefined;
  const written = new Set(theirs.flatMap(({ writes }) => writes));
  return refuse("draft-conflict", {
    conflict: {
      draftNumber,
      elements: keys.filter((key) => written.has(key)),
      theirs: theirs
        .slice(0, mostShown)
        .reverse()
        .map(({ number, personName, operations }) => ({ draftNumber: number, by: personName, operations })),
      mine,
    },
  });
}
