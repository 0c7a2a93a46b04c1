import { SealIssue, type NewSealIssue, type SealHindrance, type SealIssueNow } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../../outcome.ts";
import { append } from "../../record/append.ts";
import type { Connection } from "../../store/connection.ts";
import type { Database } from "../../store/database.ts";
import { findMatter, insertMatter, isMatterId, nextNumber, readMatters } from "../../store/matter-rows.ts";
import { readRevision } from "../../store/revision-rows.ts";
import { actOf } from "../act-of.ts";
import { bodyDigestOf } from "../body-digest.ts";
import { newestRevision } from "../newest-revision.ts";
import { authorOf, type Part } from "../part.ts";
import { Standings } from "../standings.ts";
import { readDispositions } from "./dispositions.ts";
import { readHindrances } from "./hindrances.ts";

/** Takes PRELIMINARY off the sheets of the newest revision, once nothing stands in the way. The service seals nothing. */
export async function issueForSeal(
  database: Database,
  sender: Part,
  body: NewSealIssue,
): Promise<Outcome<SealIssueNow>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, body);
  return actOf(database, sender, "issue-for-seal", async (tx, part) => {
    const earlier = await findMatter(tx, projectId, { kind: "seal issue", id: body.id }, SealIssue);
    if (earlier?.bodyDigest === bodyDigest) return done(await sealIssueNow(tx, projectId, earlier.matter));
    if (await isMatterId(tx, projectId, body.id)) return refuse("id-reused");
    const refused = await refusalOf(tx, projectId, body);
    if (refused !== undefined) return refused;
    const author = authorOf(part, "issue-for-seal");
    const number = await nextNumber(tx, projectId, "seal issue");
    const raised = (issuedAt: string) => ({ ...body, number, author, issuedAt });
    const entry = await append(tx, projectId, author, ({ at }) => ({
      kind: "issued for seal",
      issue: { ...raised(at), steps: [] },
    }));
    const row = { kind: "seal issue", id: body.id, number, entry: entry.number, bodyDigest } as const;
    await insertMatter(tx, projectId, { ...row, body: raised(entry.at) });
    return done(await sealIssueNow(tx, projectId, { ...raised(entry.at), steps: [] }));
  });
}

export const sealIssueNow = async (db: Connection, projectId: string, issue: SealIssue): Promise<SealIssueNow> => ({
  issue,
  standing: await new Standings(db, projectId).of(null, issue),
});

async function refusalOf(tx: Connection, projectId: string, body: NewSealIssue): Promise<Outcome<never> | undefined> {
  const bound = await newestRevision(tx, projectId, body);
  if (!bound.ok) return bound;
  const issues = await readMatters(tx, projectId, "seal issue", SealIssue);
  if (issues.some(({ revision }) => revision === body.revision))
    return refuse("already-answered", { detail: `revision ${body.revision} is issued for seal` });
  const newest = await readRevision(tx, projectId, body.revision);
  if (newest === null) return refuse("not-found");
  const standings = new Standings(tx, projectId);
  const dispositions = await readDispositions(tx, projectId, { standings, newest });
  const hindrances = await readHindrances(tx, projectId, { newest, dispositions });
  return hindrances.length === 0 ? undefined : refuse("seal-hindered", { detail: counted(hindrances) });
}

/** "2 of: mark; 1 of: condition open". The list itself is read with what lies between the revision and its seal. */
function counted(hindrances: readonly SealHindrance[]): string {
  const counts = new Map<string, number>();
  for (const { why } of hindrances) counts.set(why, (counts.get(why) ?? 0) + 1);
  return [...counts].map(([why, count]) => `${count} of: ${why}`).join("; ");
}
