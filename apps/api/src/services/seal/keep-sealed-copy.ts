import { SealIssue, type NewSealedCopy, type SealedCopy, type SealIssueNow } from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../../outcome.ts";
import { append } from "../../record/append.ts";
import type { Database } from "../../store/database.ts";
import { findFile } from "../../store/file-rows.ts";
import { findMatter, findStep, insertStep } from "../../store/matter-rows.ts";
import { actOf } from "../act-of.ts";
import { bodyDigestOf } from "../body-digest.ts";
import { authorOf, type Part } from "../part.ts";
import { sealIssueNow } from "./issue-for-seal.ts";

/** Lays the sealed PDF that came back beside its issue: a kept file, by the digest of its bytes. */
export async function keepSealedCopy(
  database: Database,
  sender: Part,
  issueId: string,
  body: NewSealedCopy,
): Promise<Outcome<SealIssueNow>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, { issueId, body });
  return actOf(database, sender, "issue-for-seal", async (tx, part) => {
    const found = await findMatter(tx, projectId, { kind: "seal issue", id: issueId }, SealIssue);
    if (found === null) return refuse("not-found");
    const issue = found.matter;
    const earlier = await findStep(tx, projectId, body.id);
    if (earlier !== null)
      return earlier.bodyDigest === bodyDigest ? done(await sealIssueNow(tx, projectId, issue)) : refuse("id-reused");
    const file = await findFile(tx, projectId, body.fileId);
    if (file === null) return refuseField("body-invalid", "/fileId", "no such file is kept here");
    if (file.mediaType !== "application/pdf") return refuseField("body-invalid", "/fileId", "a sealed copy is a PDF");
    if (file.digest !== body.digest) return refuseField("digest-mismatch", "/digest", "not that file's");
    const by = authorOf(part, "issue-for-seal");
    const { name, sizeBytes } = file;
    const copyAt = (at: string): SealedCopy => ({ ...body, name, sizeBytes, by, at });
    const { revision } = issue;
    const { number: entry, at } = await append(tx, projectId, by, (place) => {
      return { kind: "sealed copy kept", issueId, revision, copy: copyAt(place.at) };
    });
    const ordinal = issue.steps.length + 1;
    await insertStep(tx, projectId, { id: body.id, matterId: issueId, ordinal, entry, body: copyAt(at), bodyDigest });
    return done(await sealIssueNow(tx, projectId, { ...issue, steps: [...issue.steps, copyAt(at)] }));
  });
}
