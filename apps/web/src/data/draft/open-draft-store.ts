import type { Draft, DraftAct, DraftActDone } from "@cornerway/schema";
import { newUuid } from "../../tools/new-uuid.ts";
import { csrfToken } from "../csrf-token.ts";
import { fetchDraft, sendAct } from "../draft.ts";
import { takeAhead } from "./draft-ahead.ts";
import { changePerson } from "../change-person.ts";
import { isProblem, mayPass } from "../http.ts";
import { queryClient } from "../query-client.ts";
import { fetchSession } from "../session.ts";
import { DraftStore } from "./draft-store.ts";
import { keptDraft, PageKeep } from "./page-keep.ts";

export interface OpenDraft {
  store: DraftStore;
  close: () => void;
}

/** Reads the draft of a project, or what this browser last saw of it, and opens it for drawing with the moves kept here. */
export async function openDraftStore(personId: string, projectId: string): Promise<OpenDraft> {
  const reading = readDraft(personId, projectId);
  let store: DraftStore | null = null;
  const left: Parameters<DraftStore["adopt"]>[0][] = [];
  const opening = PageKeep.open({ personId, projectId, pageId: newUuid() }, (kept) => {
    if (store === null) left.push(kept);
    else store.adopt(kept);
  });
  const draft = await reading.catch(async (error: unknown) => {
    (await opening).close();
    throw error;
  });
  const shelf = await opening;
  store = new DraftStore(draft, {
    fetchDraft: () => fetchDraft(projectId),
    sendAct: (act) => sendSignedIn(projectId, act),
    keep: (kept) => shelf.keep(kept),
    newId: newUuid,
    now: () => Date.now(),
    later: (call, ms) => {
      const timer = setTimeout(call, ms);
      return () => clearTimeout(timer);
    },
  });
  for (const kept of left) store.adopt(kept);
  const stopKeeping = keepDraftOf(store, shelf);
  return {
    store,
    close: () => {
      stopKeeping();
      store.stop();
      shelf.close();
    },
  };
}

async function readDraft(personId: string, projectId: string): Promise<Draft> {
  try {
    return await (takeAhead(projectId) ?? fetchDraft(projectId));
  } catch (error) {
    const kept = mayPass(error) ? await keptDraft(personId, projectId) : undefined;
    if (kept === undefined) throw error;
    return kept;
  }
}

/**
 * A page opened while the line was down has no token, or an old one: who is signed in is asked first. A sign-in that ran
 * out leads to the sign-in sheet; the moves stay in this browser for whoever drew them.
 */
async function sendSignedIn(projectId: string, act: DraftAct): Promise<DraftActDone> {
  if (csrfToken.value === "") await fetchSession();
  try {
    return await sendAct(projectId, act);
  } catch (error) {
    if (isProblem(error, "csrf-refused")) csrfToken.value = "";
    if (isProblem(error, "not-signed-in")) changePerson(queryClient, null);
    throw error;
  }
}

const keepAfterMs = 800;

/** The server's draft is kept a moment after it last changed. */
function keepDraftOf(store: DraftStore, shelf: PageKeep): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let keptNumber = -1;
  const keep = () => {
    const { number, contentDigest, movesSinceRevision, server: scheme } = store.getSnapshot();
    if (number === keptNumber) return;
    keptNumber = number;
    // Without a place to keep it the draft is read from the service, as ever; moves are another matter, see the store.
    void shelf.keepDraft({ number, contentDigest, movesSinceRevision, scheme }).catch(() => undefined);
  };
  const soon = () => {
    clearTimeout(timer);
    timer = setTimeout(keep, keepAfterMs);
  };
  soon();
  const unsubscribe = store.subscribe(soon);
  return () => {
    clearTimeout(timer);
    unsubscribe();
  };
}
