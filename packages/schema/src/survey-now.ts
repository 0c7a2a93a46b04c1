import { z } from "zod";
import { SurveyedContainer, SurveyState } from "./survey.ts";
import { ProjectSurveyLimits, SurveyFinding, SurveyLimits } from "./survey-limits.ts";
import { SurveyDeparture } from "./survey-on-drawing.ts";
import { ElementId } from "./ids.ts";
import { RevisionLetter } from "./review.ts";
import { Tag } from "./text.ts";

export const SurveyedContainerNow = z
  .strictObject({
    container: SurveyedContainer,
    state: SurveyState,
    position: z.strictObject({ elementId: ElementId, tag: Tag }).nullable(),
    /** The last inspection against the limits. */
    findings: z.array(SurveyFinding),
    /** Where the newest revision says otherwise. */
    departures: z.array(SurveyDeparture),
  })
  .meta({ id: "SurveyedContainerNow" });
export type SurveyedContainerNow = z.infer<typeof SurveyedContainerNow>;

/** The containers offered for a building, and what they are held against. */
export const SurveyNow = z
  .strictObject({
    /** The newest revision, which departures are told of; null while none was sent. */
    revision: RevisionLetter.nullable(),
    limits: SurveyLimits,
    /** Whoever set the limits for this project; null where they are those of the program. */
    setBy: ProjectSurveyLimits.pick({ author: true, setAt: true }).nullable(),
    containers: z.array(SurveyedContainerNow),
  })
  .meta({ id: "SurveyNow" });
export type SurveyNow = z.infer<typeof SurveyNow>;
