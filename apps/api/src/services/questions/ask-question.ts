import { elementById, type NewQuestion, type Question, type QuestionNow } from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../../outcome.ts";
import { append } from "../../record/append.ts";
import type { Connection } from "../../store/connection.ts";
import type { Database } from "../../store/database.ts";
import { insertMatter, isMatterId, nextNumber } from "../../store/matter-rows.ts";
import { readRevision } from "../../store/revision-rows.ts";
import { actOf } from "../act-of.ts";
import { bodyDigestOf } from "../body-digest.ts";
import { authorOf, type Part } from "../part.ts";
import { Standings } from "../standings.ts";
import { findQuestion } from "./find-question.ts";
import { questionNow } from "./read-questions.ts";

/** Puts a question to the engineer at an element of a revision. */
export async function askQuestion(database: Database, sender: Part, body: NewQuestion): Promise<Outcome<QuestionNow>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, body);
  return actOf(database, sender, "ask-question", async (tx, part) => {
    const earlier = await findQuestion(tx, projectId, body.id);
    if (earlier?.bodyDigest === bodyDigest)
      return done(await questionNow(new Standings(tx, projectId), earlier.matter));
    if (await isMatterId(tx, projectId, body.id)) return refuse("id-reused");
    const refused = await refusalOf(tx, projectId, body);
    if (refused !== undefined) return refused;
    const author = authorOf(part, "ask-question");
    const number = await nextNumber(tx, projectId, "question");
    const questionAt = (askedAt: string) => ({ ...body, number, author, askedAt });
    const asked = (at: string): Question => ({ ...questionAt(at), steps: [] });
    const entry = await append(tx, projectId, author, ({ at }) => ({ kind: "question asked", question: asked(at) }));
    const row = { kind: "question", id: body.id, number, entry: entry.number, bodyDigest } as const;
    await insertMatter(tx, projectId, { ...row, body: questionAt(entry.at) });
    return done(await questionNow(new Standings(tx, projectId), asked(entry.at)));
  });
}

async function refusalOf(tx: Connection, projectId: string, body: NewQuestion): Promise<Outcome<never> | undefined> {
  const revision = await readRevision(tx, projectId, body.revision);
  if (revision === null) return refuseField("body-invalid", "/revision", "there is no such revision");
  return elementById(revision.scheme, body.elementId) === undefined
    ? refuseField("element-unknown", "/elementId", `there is no ${body.elementId}`)
    : undefined;
}
