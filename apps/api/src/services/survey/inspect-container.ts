import type { NewInspection } from "@cornerway/schema";
import { done } from "../../outcome.ts";
import type { Database } from "../../store/database.ts";
import { refusePhotos } from "../files/refuse-photos.ts";
import type { Part } from "../part.ts";
import { takeSurveyStep } from "./take-survey-step.ts";

/** Keeps what was found of a container; it waits for the engineer's judgement again. */
export const inspectContainer = (database: Database, sender: Part, containerId: string, step: NewInspection) =>
  takeSurveyStep(database, sender, { containerId, step }, async (tx) => {
    const refused = await refusePhotos(tx, sender.projectId, step.photos);
    return refused ?? done((signed) => ({ ...step, ...signed }));
  });
