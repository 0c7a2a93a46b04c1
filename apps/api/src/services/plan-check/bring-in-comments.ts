import { randomUUID } from "node:crypto";
import { mostComments, type BringInComments, type PlanCheckRegister, type RaisedComment } from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../../outcome.ts";
import { append } from "../../record/append.ts";
import type { Connection } from "../../store/connection.ts";
import type { Database } from "../../store/database.ts";
import { insertMatter, isMatterId } from "../../store/matter-rows.ts";
import { actOf } from "../act-of.ts";
import { bodyDigestOf } from "../body-digest.ts";
import { authorOf, type Part } from "../part.ts";
import { parseComments, type ReadComment } from "./parse-comments.ts";
import { findComment, readRegister } from "./read-register.ts";

/** Brings in a sheet of comments, whole or not at all: one entry of the record, one row each. The first has the id sent. */
export async function bringInComments(
  database: Database,
  sender: Part,
  body: BringInComments,
): Promise<Outcome<PlanCheckRegister>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, body);
  const read = parseComments(body);
  if (!read.ok) return refuseField("body-invalid", "/text", read.why);
  return actOf(database, sender, "keep-comments", async (tx, part) => {
    const earlier = await findComment(tx, projectId, body.id);
    if (earlier !== null)
      return earlier.bodyDigest === bodyDigest ? done(await readRegister(tx, projectId)) : refuse("id-reused");
    if (await isMatterId(tx, projectId, body.id)) return refuse("id-reused");
    const before = await readRegister(tx, projectId);
    const refused = refusalOf(before, read.comments);
    if (refused !== undefined) return refused;
    const author = authorOf(part, "keep-comments");
    const ids = read.comments.map((_, at) => (at === 0 ? body.id : randomUUID()));
    const raisedAt = (at: string): RaisedComment[] =>
      read.comments.map((comment, index) => ({
        ...{ id: ids[index] ?? body.id, order: before.count.in + index + 1, ...comment },
        ...{ broughtInBy: author, broughtInAt: at },
      }));
    const entry = await append(tx, projectId, author, ({ at }) => ({
      kind: "comments brought in",
      comments: raisedAt(at),
    }));
    for (const raised of raisedAt(entry.at)) await insert(tx, projectId, raised, entry.number, bodyDigest);
    return done(await readRegister(tx, projectId));
  });
}

const insert = (tx: Connection, projectId: string, raised: RaisedComment, entry: number, bodyDigest: string) =>
  insertMatter(tx, projectId, {
    kind: "comment",
    id: raised.id,
    number: raised.order,
    entry,
    body: raised,
    bodyDigest,
  });

/** A sheet that came before is not brought in again: as many go out as came in. */
function refusalOf({ comments, count }: PlanCheckRegister, read: readonly ReadComment[]): Outcome<never> | undefined {
  if (count.in + read.length > mostComments)
    return refuseField("body-invalid", "/text", `a project keeps at most ${mostComments} comments`);
  const known = read.filter(({ number, text }) =>
    comments.some((each) => each.number === number && each.text === text),
  );
  return known.length === 0
    ? undefined
    : refuseField("body-invalid", "/text", `in the register already: ${known.map(({ number }) => number).join(", ")}`);
}
