import { emptyScheme } from "@cornerway/schema";
import { Ruled } from "../../controls/Ruled.tsx";
import { Trouble } from "../../controls/Trouble.tsx";
import type { DraftStore } from "../../data/draft/draft-store.ts";
import { useDraft } from "../../data/draft/use-draft.ts";
import { useRevision } from "../../data/revision.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { OpeningsOf } from "./OpeningsOf.tsx";

/** Sheet 2: on the draft for those who may read it, on the last revision sent for everyone else. */
export function OpeningsSheet() {
  const { draft } = useRoom();
  return draft === null ? <SentOpenings /> : <DraftOpenings store={draft} />;
}

function DraftOpenings({ store }: { store: DraftStore }) {
  const { project, say } = useRoom();
  const { scheme, movesSinceRevision, pending } = useDraft(store);
  return (
    <OpeningsOf
      scheme={scheme}
      letter={project.revision}
      draftMoves={movesSinceRevision + pending.length}
      drawAsleepBecause={whyNot(project, "draw")}
      draw={(operations, tag) => {
        const result = store.draw(operations);
        say(result.ok ? `${tag} is drawn so.` : `${tag} could not be drawn so. Nothing is changed.`);
      }}
    />
  );
}

function SentOpenings() {
  const { project } = useRoom();
  const revision = useRevision(project.id, project.revision);
  if (revision.isError && revision.data === undefined)
    return <Trouble error={revision.error} again={() => void revision.refetch()} />;
  if (project.revision !== null && revision.isPending) return <Ruled label="Fetching the revision" />;
  return <OpeningsOf scheme={revision.data?.scheme ?? emptyScheme} letter={project.revision} draftMoves={0} />;
}
