import { Draft, DraftActDone } from "@cornerway/schema";
import type { DraftAct } from "@cornerway/schema";
import { api, read } from "./api/client.ts";

const at = (projectId: string) => ({ params: { path: { projectId } } });

export const fetchDraft = (projectId: string) => read(Draft, api.GET("/api/projects/{projectId}/draft", at(projectId)));

export const sendAct = (projectId: string, act: DraftAct): Promise<DraftActDone> =>
  read(DraftActDone, api.POST("/api/projects/{projectId}/draft/acts", { ...at(projectId), body: act }));
