import { surveyFindings } from "@cornerway/engine";
import { lastInspection, type NewJudgement, type SurveyFinding } from "@cornerway/schema";
import { done, refuseField } from "../../outcome.ts";
import type { Database } from "../../store/database.ts";
import type { Part } from "../part.ts";
import { limitsOf } from "./survey-limits.ts";
import { takeSurveyStep } from "./take-survey-step.ts";

/** Accepts a container, asks for its repair, or rejects it. None is accepted with something beyond its limit. */
export const judgeContainer = (database: Database, sender: Part, containerId: string, step: NewJudgement) =>
  takeSurveyStep(database, sender, { containerId, step }, async (tx, { container }) => {
    const inspection = lastInspection(container);
    const { limits } = await limitsOf(tx, sender.projectId);
    const findings = inspection === undefined ? [] : surveyFindings(inspection, limits);
    const beyond = findings.filter((finding) => finding.beyond === true);
    if (step.outcome === "accepted" && beyond.length > 0)
      return refuseField("container-unfit", "/outcome", `${beyond.map(beyondWords).join("; ")}. ${wayOut}`);
    return done((signed) => ({ ...step, ...signed }));
  });

const wayOut = "Ask for repair, reject it, or set this project's limit with its source";

function beyondWords(finding: SurveyFinding): string {
  const { member, foundUm, limitUm } = finding;
  const [found, limit] = [foundUm, limitUm ?? 0].map((um) => `${um / 1000} mm`);
  return finding.of === "damage"
    ? `${member}, ${finding.place}: ${finding.kind} ${found}, limit ${limit}`
    : `${member}: ${found} thick, at least ${limit}`;
}
