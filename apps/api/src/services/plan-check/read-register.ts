import { commentNow, CommentStep, KeptComment, type PlanCheckComment, type PlanCheckRegister } from "@cornerway/schema";
import type { Connection } from "../../store/connection.ts";
import { findMatter, readMatters } from "../../store/matter-rows.ts";

/** The register of a project: comments in the order they came, and how many of them stand how. */
export async function readRegister(db: Connection, projectId: string): Promise<PlanCheckRegister> {
  const comments = (await readMatters(db, projectId, "comment", KeptComment)).map(commentNow);
  const count = (state: PlanCheckComment["state"]) => comments.filter((each) => each.state === state).length;
  return {
    comments,
    count: { in: comments.length, open: count("open"), answered: count("answered"), closed: count("closed") },
  };
}

export const findComment = (db: Connection, projectId: string, id: string) =>
  findMatter(db, projectId, { kind: "comment", id }, KeptComment);

/** The comments as they stood when the record had so many entries. */
export async function readCommentsUpTo(db: Connection, projectId: string, upTo: number): Promise<PlanCheckComment[]> {
  const rows = await db.matter.findMany({
    where: { projectId, kind: "comment", entry: { lte: upTo } },
    include: { steps: { where: { entry: { lte: upTo } }, orderBy: { ordinal: "asc" } } },
    orderBy: { number: "asc" },
  });
  return rows.map(({ body, steps }) =>
    commentNow({ ...RaisedBody.parse(body), steps: steps.map((step) => CommentStep.parse(step.body)) }),
  );
}

const RaisedBody = KeptComment.omit({ steps: true });
