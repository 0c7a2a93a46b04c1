import { CheckWorking, StrengthReport, type KeptWorking } from "@cornerway/schema";
import type { RunKey } from "./assessment-rows.ts";
import type { Connection } from "./connection.ts";

/** What stands behind an assessment, as JSON text: made in the thread of the engine, written without being read again. */
export interface ProofText {
  report: string;
  workings: { id: string; working: string }[];
}

/** Written with the assessment it belongs to. */
export async function insertProof(tx: Connection, key: RunKey, { report, workings }: ProofText): Promise<void> {
  const { projectId, letter, attempt } = key;
  const ids = workings.map(({ id }) => id);
  const texts = workings.map(({ working }) => working);
  await tx.$executeRaw`
    insert into "assessment_report" ("project_id", "letter", "attempt", "report")
    values (${projectId}::uuid, ${letter}, ${attempt}, ${report}::jsonb)`;
  await tx.$executeRaw`
    insert into "assessment_working" ("project_id", "letter", "attempt", "place", "id", "working")
    select ${projectId}::uuid, ${letter}, ${attempt}, "place", "id", "working"::jsonb
    from unnest(${ids}::text[], ${texts}::text[]) with ordinality as kept ("id", "working", "place")`;
}

/** The report of a run as JSON text; null where strength was not judged. */
export async function readReportText(db: Connection, { projectId, letter, attempt }: RunKey): Promise<string | null> {
  const rows = await db.$queryRaw<{ report: string }[]>`
    select "report"::text as "report" from "assessment_report"
    where "project_id" = ${projectId}::uuid and "letter" = ${letter} and "attempt" = ${attempt}`;
  return rows[0]?.report ?? null;
}

/** One working of a run as JSON text; null where there is none under this name. */
export async function readWorkingText(
  db: Connection,
  { projectId, letter, attempt }: RunKey,
  id: string,
): Promise<string | null> {
  const rows = await db.$queryRaw<{ working: string }[]>`
    select "working"::text as "working" from "assessment_working"
    where "project_id" = ${projectId}::uuid and "letter" = ${letter} and "attempt" = ${attempt} and "id" = ${id}`;
  return rows[0]?.working ?? null;
}

/** The report of a run in its form; null where strength was not judged. Throws when the row is not ours. */
export async function readReport(db: Connection, key: RunKey): Promise<StrengthReport | null> {
  const text = await readReportText(db, key);
  return text === null ? null : StrengthReport.parse(JSON.parse(text));
}

/** Every working of a run, in the order they were made: for print. */
export async function readWorkings(db: Connection, { projectId, letter, attempt }: RunKey): Promise<KeptWorking[]> {
  const where = { projectId, letter, attempt };
  const rows = await db.assessmentWorking.findMany({ where, orderBy: { place: "asc" } });
  return rows.map(({ id, working }) => ({ id, working: CheckWorking.parse(working) }));
}
