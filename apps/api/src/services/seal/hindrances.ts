import {
  Condition,
  conditionState,
  Confirmation,
  memoryValues,
  sealHindrances,
  type MarkDispositionNow,
  type Revision,
  type SealHindrance,
} from "@cornerway/schema";
import { readLatestRun } from "../../store/assessment-rows.ts";
import type { Connection } from "../../store/connection.ts";
import { readMatters, readPlainMatters } from "../../store/matter-rows.ts";
import { readReport, readWorkings } from "../../store/proof-rows.ts";
import { foundOtherwise } from "../found-otherwise.ts";

/** What stands in the way of issuing the newest revision for seal. */
export async function readHindrances(
  db: Connection,
  projectId: string,
  { newest, dispositions }: { newest: Revision; dispositions: readonly MarkDispositionNow[] },
): Promise<SealHindrance[]> {
  const { letter, result } = newest;
  if (result === null) return [{ why: "not assessed" }];
  const { attempt } = await readLatestRun(db, projectId, letter);
  const run = { projectId, letter, attempt };
  const report = await readReport(db, run);
  const workings = (await readWorkings(db, run)).map(({ working }) => working);
  const conditions = await readMatters(db, projectId, "condition", Condition);
  const confirmations = await readPlainMatters(db, projectId, "confirmation", Confirmation);
  const found = await foundOtherwise(db, projectId, async () => newest.scheme);
  return sealHindrances({
    ...{ result, report, memory: memoryValues(result, report, workings) },
    found: [...found].sort(),
    openConditions: conditions.filter((each) => conditionState(each) !== "closed").map(({ number }) => number),
    disposed: new Set(dispositions.filter(({ stands }) => stands).map(({ disposition }) => disposition.markId)),
    confirmed: new Set(confirmations.flatMap(({ values }) => values)),
  });
}
