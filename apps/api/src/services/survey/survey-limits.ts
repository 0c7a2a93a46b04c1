import { usualSurveyLimits } from "@cornerway/engine";
import { ProjectSurveyLimits, type NewSurveyLimits, type SurveyLimits } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../../outcome.ts";
import { append } from "../../record/append.ts";
import type { Connection } from "../../store/connection.ts";
import type { Database } from "../../store/database.ts";
import { findPlainMatter, insertMatter, isMatterId, nextNumber, readPlainMatters } from "../../store/matter-rows.ts";
import { actOf } from "../act-of.ts";
import { bodyDigestOf } from "../body-digest.ts";
import { authorOf, type Part } from "../part.ts";

/** What containers of a project are held against, and who set it; the usual limits until someone does. */
export async function limitsOf(
  db: Connection,
  projectId: string,
): Promise<{ limits: SurveyLimits; setBy: Pick<ProjectSurveyLimits, "author" | "setAt"> | null }> {
  const last = (await readPlainMatters(db, projectId, "survey limits", ProjectSurveyLimits)).at(-1);
  if (last === undefined) return { limits: usualSurveyLimits, setBy: null };
  const { limits, author, setAt } = last;
  return { limits, setBy: { author, setAt } };
}

/** The engineer sets the limits of this project, each with its source. */
export async function setSurveyLimits(
  database: Database,
  sender: Part,
  body: NewSurveyLimits,
): Promise<Outcome<ProjectSurveyLimits>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, body);
  return actOf(database, sender, "judge-container", async (tx, part) => {
    const earlier = await findPlainMatter(tx, projectId, { kind: "survey limits", id: body.id }, ProjectSurveyLimits);
    if (earlier?.bodyDigest === bodyDigest) return done(earlier.matter);
    if (await isMatterId(tx, projectId, body.id)) return refuse("id-reused");
    const author = authorOf(part, "judge-container");
    const number = await nextNumber(tx, projectId, "survey limits");
    const set = (setAt: string): ProjectSurveyLimits => ({ ...body, number, author, setAt });
    const entry = await append(tx, projectId, author, ({ at }) => ({ kind: "survey limits set", set: set(at) }));
    const row = { kind: "survey limits", id: body.id, number, entry: entry.number, bodyDigest } as const;
    await insertMatter(tx, projectId, { ...row, body: set(entry.at) });
    return done(set(entry.at));
  });
}
