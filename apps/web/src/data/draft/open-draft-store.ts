import { newUuid } from "../../tools/new-uuid.ts";
import { fetchDraft, sendAct } from "../draft.ts";
import { DraftStore } from "./draft-store.ts";

/** Reads the draft of a project and opens it for drawing. */
export async function openDraftStore(projectId: string): Promise<DraftStore> {
  return new DraftStore(await fetchDraft(projectId), {
    fetchDraft: () => fetchDraft(projectId),
    sendAct: (act) => sendAct(projectId, act),
    newId: newUuid,
    now: () => Date.now(),
    later: (call, ms) => {
      const timer = setTimeout(call, ms);
      return () => clearTimeout(timer);
    },
  });
}
