import { Draft, DraftActDone } from "@cornerway/schema";
import type { DraftAct } from "@cornerway/schema";
import { http } from "./http.ts";

export const fetchDraft = (projectId: string) => http(Draft, `/api/projects/${projectId}/draft`);

export const sendAct = (projectId: string, act: DraftAct) =>
  http(DraftActDone, `/api/projects/${projectId}/draft/acts`, { method: "POST", body: act });
