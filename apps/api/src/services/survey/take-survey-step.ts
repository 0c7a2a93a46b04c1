import {
  refuseSurveyStep,
  surveyActs,
  SurveyedContainer,
  type Author,
  type NewInspection,
  type NewJudgement,
  type NewPosition,
  type SurveyedContainerNow,
  type SurveyStep,
} from "@cornerway/schema";
import { done, refuse, type Outcome } from "../../outcome.ts";
import { append } from "../../record/append.ts";
import type { Connection } from "../../store/connection.ts";
import type { Database } from "../../store/database.ts";
import { findMatter, findStep, insertStep } from "../../store/matter-rows.ts";
import { actOf } from "../act-of.ts";
import { bodyDigestOf } from "../body-digest.ts";
import { authorOf, type Part } from "../part.ts";
import { surveyedNow } from "./read-survey.ts";

type Given = NewInspection | NewJudgement | NewPosition;

/** What a step asks beyond who may take it and when, and what else it does, in the same transaction; gives the step as it is kept. */
export type Fulfil<G extends Given> = (
  tx: Connection,
  about: { container: SurveyedContainer; step: G; by: Author; bodyDigest: string },
) => Promise<Outcome<(signed: { by: Author; at: string }) => SurveyStep>>;

/** Takes one step on a surveyed container. Sent twice, it is one step with one answer. */
export async function takeSurveyStep<G extends Given>(
  database: Database,
  sender: Part,
  { containerId, step }: { containerId: string; step: G },
  fulfil: Fulfil<G>,
): Promise<Outcome<SurveyedContainerNow>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, { containerId, step });
  const act = surveyActs[step.step];
  return actOf(database, sender, act, async (tx, part) => {
    const found = await findMatter(tx, projectId, { kind: "container", id: containerId }, SurveyedContainer);
    if (found === null) return refuse("not-found");
    const container = found.matter;
    const earlier = await findStep(tx, projectId, step.id);
    if (earlier !== null)
      return earlier.bodyDigest === bodyDigest
        ? done(await surveyedNow(tx, projectId, container))
        : refuse("id-reused");
    const by = authorOf(part, act);
    const refused = refuseSurveyStep(container, step, by);
    if (refused !== undefined) return refuse(refused.code, { detail: refused.detail });
    const fulfilled = await fulfil(tx, { container, step, by, bodyDigest });
    if (!fulfilled.ok) return fulfilled;
    const stepAt = (at: string): SurveyStep => fulfilled.value({ by, at });
    const { containerNumber, steps } = container;
    const { number: entry, at } = await append(tx, projectId, by, (place) => {
      return { kind: "container followed", containerId, containerNumber, step: stepAt(place.at) };
    });
    const ordinal = steps.length + 1;
    await insertStep(tx, projectId, {
      id: step.id,
      matterId: containerId,
      ordinal,
      entry,
      body: stepAt(at),
      bodyDigest,
    });
    return done(await surveyedNow(tx, projectId, { ...container, steps: [...steps, stepAt(at)] }));
  });
}
