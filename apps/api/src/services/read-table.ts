import { mayReadEntry, recordKinds, type RevisionTable } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../outcome.ts";
import type { Connection } from "../store/connection.ts";
import { readLatestRun } from "../store/assessment-rows.ts";
import { readReport, readWorkings } from "../store/proof-rows.ts";
import { readRevision } from "../store/revision-rows.ts";
import { readEntries } from "../store/record-rows.ts";
import { tableFile } from "../tables/all-tables.ts";
import type { Part } from "./part.ts";
import { readSurvey } from "./survey/read-survey.ts";

/** Tables that tell what happened. */
const ofRecord: ReadonlySet<RevisionTable> = new Set(["inspections", "deferred", "submittals"]);
const mostEntries = 100_000;

/** One table of a revision, from its recorded answer. Refused while there is none. */
export async function readTable(
  db: Connection,
  part: Part,
  { letter, table }: { letter: string; table: RevisionTable },
): Promise<Outcome<string>> {
  const { projectId } = part;
  const revision = await readRevision(db, projectId, letter);
  if (revision === null) return refuse("not-found");
  if (revision.result === null) return refuse("assessment-pending");
  const { attempt } = await readLatestRun(db, projectId, letter);
  const key = { projectId, letter, attempt };
  const report = await readReport(db, key);
  const proof = report === null ? null : { report, workings: table === "checks" ? await readWorkings(db, key) : [] };
  const { scheme, contentDigest, result: assessment } = revision;
  const survey = await readSurvey(db, part);
  const kinds = recordKinds.filter((kind) => mayReadEntry(part.roles, kind));
  const entries = ofRecord.has(table) ? await readEntries(db, projectId, { after: 0, limit: mostEntries, kinds }) : [];
  return done(tableFile(table, { letter, contentDigest, scheme, assessment, proof, survey, entries }));
}
