import type { AskForSet, PermitSetRun } from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../../outcome.ts";
import { addSet } from "../../queue/add-set.ts";
import type { Connection } from "../../store/connection.ts";
import type { Database } from "../../store/database.ts";
import { findSet, insertSet } from "../../store/permit-set-rows.ts";
import { lastNumber } from "../../store/record-rows.ts";
import { readRevision } from "../../store/revision-rows.ts";
import { actOf } from "../act-of.ts";
import { bodyDigestOf } from "../body-digest.ts";
import { authorOf, type Part } from "../part.ts";

/** Has the set of a revision printed from the record as it stands now. The same asked twice is one. */
export function askForSet(database: Database, sender: Part, body: AskForSet): Promise<Outcome<PermitSetRun>> {
  const { projectId } = sender;
  const { id, letter, units } = body;
  const bodyDigest = bodyDigestOf(sender, body);
  return actOf(database, sender, "print-set", async (tx, part) => {
    const earlier = await findSet(tx, { projectId, id });
    if (earlier !== null) return earlier.bodyDigest === bodyDigest ? done(earlier.run) : refuse("id-reused");
    const refused = await notToPrint(tx, projectId, letter);
    if (refused !== undefined) return refused;
    const upTo = (await lastNumber(tx, projectId)) ?? 0;
    const askedAt = new Date().toISOString();
    await insertSet(tx, projectId, {
      id,
      letter,
      units,
      upTo,
      askedBy: authorOf(part, "print-set"),
      askedAt,
      bodyDigest,
    });
    await addSet(tx, { projectId, id });
    return found(tx, projectId, id);
  });
}

async function notToPrint(tx: Connection, projectId: string, letter: string): Promise<Outcome<never> | undefined> {
  const revision = await readRevision(tx, projectId, letter);
  if (revision === null) return refuseField("body-invalid", "/letter", "there is no such revision");
  return revision.result === null
    ? refuse("assessment-pending", { detail: `revision ${letter} has no assessment to print` })
    : undefined;
}

async function found(tx: Connection, projectId: string, id: string): Promise<Outcome<PermitSetRun>> {
  const set = await findSet(tx, { projectId, id });
  return set === null ? refuse("not-found") : done(set.run);
}
