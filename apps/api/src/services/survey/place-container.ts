import { randomUUID } from "node:crypto";
import {
  containerNumberWords,
  lastInspection,
  positionOf,
  SurveyedContainer,
  surveyOperations,
  surveyState,
  withdrawOperations,
  type Author,
  type Container,
  type NewPosition,
  type Operation,
} from "@cornerway/schema";
import { done, refuseField, type Outcome } from "../../outcome.ts";
import type { Connection } from "../../store/connection.ts";
import type { Database } from "../../store/database.ts";
import { readDraft, type DraftRow } from "../../store/draft-rows.ts";
import { readMatters } from "../../store/matter-rows.ts";
import { applyToDraft } from "../apply-to-draft.ts";
import type { Part } from "../part.ts";
import { takeSurveyStep } from "./take-survey-step.ts";

/**
 * Assigns an accepted container to a unit of the draft and draws what was measured of it there, or releases it and takes that
 * off again. Only an accepted container of the unit's type, on a unit that has none.
 */
export const placeContainer = (database: Database, sender: Part, containerId: string, step: NewPosition) =>
  takeSurveyStep(database, sender, { containerId, step }, async (tx, { container, by, bodyDigest }) => {
    const { projectId } = sender;
    const draft = await readDraft(tx, projectId);
    const drawIn = (operations: Operation[]) => drawOf(tx, projectId, { draft, by, bodyDigest, operations });
    if (step.step === "released") {
      const drawn = await drawIn(withdrawOperations(draft.scheme, positionOf(container)?.elementId ?? "", container));
      return drawn ?? done((signed) => ({ ...step, ...signed }));
    }
    const unit = draft.scheme.containers.find(({ id }) => id === step.elementId);
    if (unit === undefined) return refuseField("body-invalid", "/elementId", "the draft has no such unit");
    const others = await readMatters(tx, projectId, "container", SurveyedContainer);
    const why = unfitness(container, unit, others);
    if (why !== undefined) return refuseField("container-unfit", "/elementId", why);
    const inspection = lastInspection(container);
    const found = inspection === undefined ? [] : surveyOperations(draft.scheme, unit, container, inspection);
    return (await drawIn(found)) ?? done((signed) => ({ ...step, tag: unit.tag, ...signed }));
  });

/** Why a container cannot stand on a unit's place, with what to do; undefined when it can. */
function unfitness(
  container: SurveyedContainer,
  { id, tag, type }: Container,
  all: readonly SurveyedContainer[],
): string | undefined {
  const name = containerNumberWords(container.containerNumber);
  const state = surveyState(container);
  if (state !== "accepted")
    return `${name} is ${stateWords[state]}, and ${tag} takes only a container that the engineer has accepted: place another there, or have this one inspected and judged`;
  if (container.type !== type)
    return `${tag} is drawn as ${type}, and ${name} is ${container.type}: place one of the drawn type there, or draw ${tag} as ${container.type}`;
  const there = all.find((each) => positionOf(each)?.elementId === id);
  return there === undefined
    ? undefined
    : `${containerNumberWords(there.containerNumber)} is assigned to ${tag}: release it first, or place this one elsewhere`;
}

const stateWords = {
  offered: "not inspected yet",
  inspected: "not judged yet",
  accepted: "accepted",
  repair: "to be repaired",
  rejected: "rejected",
} as const;

/** Draws the operations, if there are any; a refusal where the draft cannot take them. */
async function drawOf(
  tx: Connection,
  projectId: string,
  {
    draft,
    by: author,
    bodyDigest,
    operations,
  }: { draft: DraftRow; by: Author; bodyDigest: string; operations: Operation[] },
): Promise<Outcome<never> | undefined> {
  if (operations.length === 0) return undefined;
  const act = { id: randomUUID(), operations, undoes: null, bodyDigest };
  const drawn = await applyToDraft(tx, projectId, { draft, author, act });
  return drawn.ok ? undefined : drawn;
}
