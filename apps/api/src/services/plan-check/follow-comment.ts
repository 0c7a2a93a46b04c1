import {
  commentNow,
  refuseCommentStep,
  type Act,
  type Author,
  type CommentStep,
  type NewCommentStep,
  type PlanCheckComment,
} from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../../outcome.ts";
import { append } from "../../record/append.ts";
import type { Connection } from "../../store/connection.ts";
import type { Database } from "../../store/database.ts";
import { findStep, insertStep } from "../../store/matter-rows.ts";
import { readMembers } from "../../store/project-rows.ts";
import { findRevisionHead } from "../../store/revision-rows.ts";
import { actOf } from "../act-of.ts";
import { bodyDigestOf } from "../body-digest.ts";
import { authorOf, type Part } from "../part.ts";
import { readAuthority } from "./authority.ts";
import { findComment } from "./read-register.ts";

/** Which act each step is. */
const actOfStep = {
  assigned: "keep-comments",
  answered: "answer-comment",
  closed: "close-comment",
  "opened again": "close-comment",
} as const satisfies Record<NewCommentStep["step"], Act>;

const words = {
  "closed already": "it is closed; open it again first",
  "not answered": "it is not answered yet",
  "not closed": "it is open",
  "own answer": "whoever answered it does not close it",
} as const;

/** Takes one step on a comment of the authority. The same step sent twice is one step. */
export function followComment(
  database: Database,
  sender: Part,
  commentId: string,
  body: NewCommentStep,
): Promise<Outcome<PlanCheckComment>> {
  const { projectId } = sender;
  const act = actOfStep[body.step];
  const bodyDigest = bodyDigestOf(sender, { commentId, body });
  return actOf(database, sender, act, async (tx, part) => {
    const found = await findComment(tx, projectId, commentId);
    if (found === null) return refuse("not-found");
    const now = commentNow(found.matter);
    const earlier = await findStep(tx, projectId, body.id);
    if (earlier !== null) return earlier.bodyDigest === bodyDigest ? done(now) : refuse("id-reused");
    const by = authorOf(part, act);
    const refused = refuseCommentStep(now, body.step, by.id);
    if (refused === "own answer") return refuse("closer-refused", { detail: words[refused] });
    if (refused !== undefined) return refuse("step-refused", { detail: words[refused] });
    const made = await stepOf(tx, projectId, body);
    if (!made.ok) return made;
    const { number, steps } = found.matter;
    const entry = await append(tx, projectId, by, ({ at }) => ({
      kind: "comment followed",
      ...{ commentId, number, step: made.value(by, at) },
    }));
    const step = made.value(by, entry.at);
    const row = { id: body.id, matterId: commentId, ordinal: steps.length + 1, entry: entry.number, bodyDigest };
    await insertStep(tx, projectId, { ...row, body: step });
    return done(commentNow({ ...found.matter, steps: [...steps, step] }));
  });
}

type StepAt = (by: Author, at: string) => CommentStep;

/** The step as it is kept: the person by name, and a reply only where its revision is there and it names what the authority asks. */
async function stepOf(tx: Connection, projectId: string, body: NewCommentStep): Promise<Outcome<StepAt>> {
  if (body.step === "assigned") {
    const member = (await readMembers(tx, projectId)).find(({ id }) => id === body.to);
    if (member === undefined) return refuseField("body-invalid", "/to", "no one with a part in this project");
    return done((by, at) => ({ ...body, toName: member.name, by, at }));
  }
  if (body.step === "answered") {
    if ((await findRevisionHead(tx, projectId, body.revision)) === null)
      return refuseField("body-invalid", "/revision", "there is no such revision");
    const { replyNames } = (await readAuthority(tx, projectId)).profile;
    const unnamed = replyNames.find((place) => body[place] === null);
    if (unnamed !== undefined)
      return refuseField("body-invalid", `/${unnamed}`, `the authority asks each reply to name the ${unnamed}`);
  }
  return done((by, at) => ({ ...body, by, at }));
}
