import { digestOf, MarkDisposition, type NewMarkDisposition } from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../../outcome.ts";
import { append } from "../../record/append.ts";
import type { Connection } from "../../store/connection.ts";
import type { Database } from "../../store/database.ts";
import { findFile } from "../../store/file-rows.ts";
import { findPlainMatter, insertMatter, isMatterId, nextNumber } from "../../store/matter-rows.ts";
import { readRevision } from "../../store/revision-rows.ts";
import { actOf } from "../act-of.ts";
import { bodyDigestOf } from "../body-digest.ts";
import { newestRevision } from "../newest-revision.ts";
import { authorOf, type Part } from "../part.ts";

/** The engineer's own disposition of one mark, with a reason and a calculation, beside what the engine says of it. */
export async function disposeMark(
  database: Database,
  sender: Part,
  body: NewMarkDisposition,
): Promise<Outcome<MarkDisposition>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, body);
  return actOf(database, sender, "dispose-mark", async (tx, part) => {
    const earlier = await findPlainMatter(tx, projectId, { kind: "disposition", id: body.id }, MarkDisposition);
    if (earlier?.bodyDigest === bodyDigest) return done(earlier.matter);
    if (await isMatterId(tx, projectId, body.id)) return refuse("id-reused");
    const newest = await newestRevision(tx, projectId, body);
    if (!newest.ok) return newest;
    const mark = (await readRevision(tx, projectId, body.revision))?.result?.marks.find(({ id }) => id === body.markId);
    if (mark === undefined)
      return refuseField("element-unknown", "/markId", `revision ${body.revision} has no such mark`);
    const refused = await refuseCalculation(tx, projectId, body);
    if (refused !== undefined) return refused;
    const author = authorOf(part, "dispose-mark");
    const number = await nextNumber(tx, projectId, "disposition");
    const unsigned = { ...body, number, markDigest: digestOf(mark), author };
    const at = (disposedAt: string): MarkDisposition => ({ ...unsigned, disposedAt });
    const entry = await append(tx, projectId, author, (place) => ({
      kind: "mark disposed",
      disposition: at(place.at),
    }));
    const row = { kind: "disposition", id: body.id, number, entry: entry.number, bodyDigest } as const;
    await insertMatter(tx, projectId, { ...row, body: at(entry.at) });
    return done(at(entry.at));
  });
}

async function refuseCalculation(
  tx: Connection,
  projectId: string,
  { calculation }: NewMarkDisposition,
): Promise<Outcome<never> | undefined> {
  const file = await findFile(tx, projectId, calculation.fileId);
  if (file === null) return refuseField("body-invalid", "/calculation/fileId", "no such file is kept here");
  return file.digest === calculation.digest
    ? undefined
    : refuseField("digest-mismatch", "/calculation/digest", "not that file's");
}
