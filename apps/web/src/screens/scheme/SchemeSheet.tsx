import { lazy, Suspense } from "react";
import { Ruled } from "../../controls/Ruled.tsx";
import { useRoom } from "../../room/room-context.ts";
import { DraftScheme } from "./DraftScheme.tsx";

const SentScheme = lazy(async () => ({ default: (await import("./SentScheme.tsx")).SentScheme }));

/** Sheet 1: the draft for those who may read it, the last revision sent for everyone else. */
export function SchemeSheet() {
  const { draft } = useRoom();
  if (draft !== null) return <DraftScheme store={draft} />;
  return (
    <Suspense fallback={<Ruled label="Fetching the revision" />}>
      <SentScheme />
    </Suspense>
  );
}
