import { applyOperations, type ChangeRequest, type NewRequest } from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../outcome.ts";
import { append } from "../record/append.ts";
import type { Connection } from "../store/connection.ts";
import type { Database } from "../store/database.ts";
import { countRequests, findRequest, insertRequest } from "../store/request-rows.ts";
import { readRevision, readRevisionHeads } from "../store/revision-rows.ts";
import { actOf } from "./act-of.ts";
import { refuseOperation } from "./apply-to-draft.ts";
import { bodyDigestOf } from "./body-digest.ts";
import { authorOf, type Part } from "./part.ts";

/** Asks for a change, as operations on the latest revision. */
export async function makeRequest(database: Database, sender: Part, body: NewRequest): Promise<Outcome<ChangeRequest>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, body);
  return actOf(database, sender, "make-request", async (tx, part) => {
    const earlier = await findRequest(tx, projectId, body.id);
    if (earlier !== null) return earlier.bodyDigest === bodyDigest ? done(earlier.request) : refuse("id-reused");
    const refused = await refusalOf(tx, projectId, body);
    if (refused !== undefined) return refused;
    const author = authorOf(part, "make-request");
    const number = (await countRequests(tx, projectId)) + 1;
    const requestAt = (at: string): ChangeRequest => ({
      ...body,
      number,
      author,
      madeAt: at,
      state: "open",
      answer: null,
    });
    const { at } = await append(tx, projectId, author, (entry) => ({
      kind: "request made",
      request: requestAt(entry.at),
    }));
    await insertRequest(tx, projectId, requestAt(at), bodyDigest);
    return done(requestAt(at));
  });
}

async function refusalOf(tx: Connection, projectId: string, body: NewRequest): Promise<Outcome<never> | undefined> {
  const revision = await readRevision(tx, projectId, body.revision);
  if (revision === null) return refuseField("body-invalid", "/revision", "there is no such revision");
  const [latest] = await readRevisionHeads(tx, projectId);
  if (latest?.letter !== revision.letter)
    return refuse("revision-superseded", { detail: `revision ${latest?.letter} is newer` });
  if (revision.contentDigest !== body.contentDigest)
    return refuseField("digest-mismatch", "/contentDigest", "not that revision's");
  const applied = applyOperations(revision.scheme, body.operations);
  return applied.ok ? undefined : refuseOperation(revision.scheme, body.operations, applied.refusal);
}
