import { Draft, DraftActDone, mostOperations } from "@cornerway/schema";
import type { DraftAct } from "@cornerway/schema";
import { api, read } from "./api/client.ts";

const at = (projectId: string) => ({ params: { path: { projectId } } });

export const fetchDraft = (projectId: string) => read(Draft, api.GET("/api/projects/{projectId}/draft", at(projectId)));

/** Sends an act. An undo of more operations than are taken at once is sent by the id of what it takes back. */
export function sendAct(projectId: string, act: DraftAct): Promise<DraftActDone> {
  const { id, base, operations, undoes } = act;
  if (undoes !== undefined && operations.length > mostOperations)
    return read(
      DraftActDone,
      api.POST("/api/projects/{projectId}/draft/acts/{actId}/undo", {
        params: { path: { projectId, actId: undoes } },
        body: { id, base },
      }),
    );
  return read(DraftActDone, api.POST("/api/projects/{projectId}/draft/acts", { ...at(projectId), body: act }));
}
