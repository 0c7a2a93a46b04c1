import {
  Condition,
  refuseConditionStep,
  type Act,
  type ConditionNow,
  type ConditionStep,
  type JudgeCondition,
  type MeetCondition,
} from "@cornerway/schema";
import { done, refuse, type Outcome } from "../../outcome.ts";
import { append } from "../../record/append.ts";
import type { Database } from "../../store/database.ts";
import { findMatter, findStep, insertStep } from "../../store/matter-rows.ts";
import { actOf } from "../act-of.ts";
import { bodyDigestOf } from "../body-digest.ts";
import { authorAs, type Part } from "../part.ts";
import { conditionNow } from "./read-conditions.ts";

type Unsigned = { [S in ConditionStep as S["step"]]: Omit<S, "by" | "at"> }[ConditionStep["step"]];

/** Says how a condition is met. */
export const meetCondition = (database: Database, sender: Part, conditionId: string, body: MeetCondition) =>
  follow(database, sender, conditionId, { act: "meet-condition", step: { step: "met", ...body } });

/** Closes a condition that is met, or opens it again. */
export const judgeCondition = (database: Database, sender: Part, conditionId: string, body: JudgeCondition) =>
  follow(database, sender, conditionId, { act: "judge-condition", step: body });

async function follow(
  database: Database,
  sender: Part,
  id: string,
  { act, step }: { act: Extract<Act, "meet-condition" | "judge-condition">; step: Unsigned },
): Promise<Outcome<ConditionNow>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, { id, step });
  return actOf(database, sender, act, async (tx, part) => {
    const found = await findMatter(tx, projectId, { kind: "condition", id }, Condition);
    if (found === null) return refuse("not-found");
    const condition = found.matter;
    const earlier = await findStep(tx, projectId, step.id);
    if (earlier !== null)
      return earlier.bodyDigest === bodyDigest ? done(conditionNow(condition)) : refuse("id-reused");
    const by = authorAs(part, act, act === "meet-condition" ? condition.owedBy : condition.author.role);
    const refused = refuseConditionStep(condition, step.step, by);
    if (refused !== undefined) return refuse(refused.code, { detail: refused.detail });
    const { number } = condition;
    const stepAt = (at: string): ConditionStep => ({ ...step, by, at });
    const { number: entry, at } = await append(tx, projectId, by, (place) => {
      return { kind: "condition followed", conditionId: id, number, step: stepAt(place.at) };
    });
    const ordinal = condition.steps.length + 1;
    await insertStep(tx, projectId, { id: step.id, matterId: id, ordinal, entry, body: stepAt(at), bodyDigest });
    return done(conditionNow({ ...condition, steps: [...condition.steps, stepAt(at)] }));
  });
}
