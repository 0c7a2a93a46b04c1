import type { Draft } from "@cornerway/schema";
import { fetchDraft } from "../draft.ts";

let ahead: { projectId: string; draft: Promise<Draft> } | null = null;

/** Asks for the draft of a project before its sheet stands, for the first who opens it. */
export function askAhead(projectId: string): void {
  const draft = fetchDraft(projectId);
  draft.catch(() => undefined); // told to whoever takes it
  ahead = { projectId, draft };
}

/** The draft asked for ahead, once; null where none was. */
export function takeAhead(projectId: string): Promise<Draft> | null {
  const taken = ahead?.projectId === projectId ? ahead.draft : null;
  ahead = null;
  return taken;
}
