import { surveyFindings } from "@cornerway/engine";
import {
  lastInspection,
  mayReadEntry,
  positionOf,
  surveyDepartures,
  SurveyedContainer,
  surveyState,
  type Scheme,
  type SurveyedContainerNow,
  type SurveyLimits,
  type SurveyNow,
} from "@cornerway/schema";
import type { Connection } from "../../store/connection.ts";
import { readMatters } from "../../store/matter-rows.ts";
import type { Part } from "../part.ts";
import { readNewest } from "../seal/read-seal.ts";
import { limitsOf } from "./survey-limits.ts";

/** The containers offered for a building as they stand now; none for whoever may see none. */
export async function readSurvey(
  db: Connection,
  { projectId, roles }: Pick<Part, "projectId" | "roles">,
): Promise<SurveyNow> {
  const { limits, setBy } = await limitsOf(db, projectId);
  const newest = await readNewest(db, projectId);
  const containers = mayReadEntry(roles, "container offered")
    ? await readMatters(db, projectId, "container", SurveyedContainer)
    : [];
  const scheme = newest?.scheme ?? null;
  return {
    ...{ revision: newest?.letter ?? null, limits, setBy },
    containers: containers.map((container) => nowOf(container, { scheme, limits })),
  };
}

/** One container as it stands now. */
export async function surveyedNow(
  db: Connection,
  projectId: string,
  container: SurveyedContainer,
): Promise<SurveyedContainerNow> {
  const { limits } = await limitsOf(db, projectId);
  const newest = await readNewest(db, projectId);
  return nowOf(container, { scheme: newest?.scheme ?? null, limits });
}

function nowOf(
  container: SurveyedContainer,
  { scheme, limits }: { scheme: Scheme | null; limits: SurveyLimits },
): SurveyedContainerNow {
  const position = positionOf(container);
  const inspection = lastInspection(container);
  return {
    ...{ container, state: surveyState(container) },
    position: position === undefined ? null : { elementId: position.elementId, tag: position.tag },
    findings: inspection === undefined ? [] : surveyFindings(inspection, limits),
    departures: scheme === null ? [] : surveyDepartures(scheme, container),
  };
}
