import { accountRoutes } from "./account.ts";
import { archiveRoutes } from "./archives.ts";
import { authorityRoutes } from "./authority.ts";
import { conditionRoutes } from "./conditions.ts";
import { costBookRoutes } from "./cost-book.ts";
import { decisionRoutes } from "./decisions.ts";
import { draftRoutes } from "./draft.ts";
import { fileRoutes } from "./files.ts";
import { healthRoutes } from "./health.ts";
import { linkRoutes } from "./links.ts";
import { liveRoutes } from "./live.ts";
import { memberRoutes } from "./members.ts";
import { noteRoutes } from "./notes.ts";
import { optionSetRoutes } from "./option-sets.ts";
import { noticeRoutes } from "./notices.ts";
import { owedRoutes } from "./owed.ts";
import { peopleRoutes } from "./people.ts";
import { permitSetRoutes } from "./permit-sets.ts";
import { planCheckRoutes } from "./plan-check.ts";
import { premiumRoutes } from "./premiums.ts";
import { projectRoutes } from "./projects.ts";
import { questionRoutes } from "./questions.ts";
import { readerLinkRoutes } from "./reader-links.ts";
import { recordProofRoutes } from "./record-proofs.ts";
import { recordRoutes } from "./record.ts";
import { requestRoutes } from "./requests.ts";
import { revisionRoutes } from "./revisions.ts";
import { schemeFileRoutes } from "./scheme-file.ts";
import { sealRoutes } from "./seal.ts";
import { sessionRoutes } from "./session.ts";
import { siteRoutes } from "./site.ts";
import { stampRoutes } from "./stamps.ts";
import { startProjectRoutes } from "./start-project.ts";
import { surveyRoutes } from "./survey.ts";
import { tableRoutes } from "./tables.ts";
import { tokenRoutes } from "./tokens.ts";
import { webhookRoutes } from "./webhooks.ts";

/** Every route of the service; the API description is made from the same list. */
export const allRoutes = [
  ...[healthRoutes, sessionRoutes, projectRoutes, draftRoutes, revisionRoutes, tableRoutes],
  ...[noteRoutes, requestRoutes, stampRoutes, recordRoutes, recordProofRoutes, archiveRoutes, liveRoutes, noticeRoutes],
  ...[questionRoutes, conditionRoutes, owedRoutes, sealRoutes, fileRoutes],
  ...[linkRoutes, accountRoutes, peopleRoutes, readerLinkRoutes, startProjectRoutes],
  ...[tokenRoutes, webhookRoutes, memberRoutes, schemeFileRoutes],
  ...[costBookRoutes, premiumRoutes, decisionRoutes, optionSetRoutes],
  ...[permitSetRoutes, planCheckRoutes, authorityRoutes],
  ...[surveyRoutes, siteRoutes],
];
