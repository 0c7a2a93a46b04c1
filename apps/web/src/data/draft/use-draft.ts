import { useSyncExternalStore } from "react";
import type { DraftSnapshot, DraftStore } from "./draft-store.ts";

/** The draft on this page, drawn again at every move. */
export const useDraft = (store: DraftStore): DraftSnapshot => useSyncExternalStore(store.subscribe, store.getSnapshot);
