import { useRoom } from "../../room/room-context.ts";
import { DraftScheme } from "./DraftScheme.tsx";
import { SentScheme } from "./SentScheme.tsx";

/** Sheet 1: the draft for those who may read it, the last revision sent for everyone else. */
export function SchemeSheet() {
  const { draft } = useRoom();
  return draft === null ? <SentScheme /> : <DraftScheme store={draft} />;
}
