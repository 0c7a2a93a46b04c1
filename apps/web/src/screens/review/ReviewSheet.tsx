import { lazy, Suspense, useState } from "react";
import { Ruled } from "../../controls/Ruled.tsx";
import { Trouble } from "../../controls/Trouble.tsx";
import { useRevision } from "../../data/revision.ts";
import { useThread } from "../../data/thread.ts";
import { useRoom } from "../../room/room-context.ts";
import { ReviewOf } from "./ReviewOf.tsx";

const NothingSent = lazy(async () => ({ default: (await import("./NothingSent.tsx")).NothingSent }));

/** Sheet 3: the last revision sent, or an earlier one chosen on the spine, with what people wrote on it. */
export function ReviewSheet() {
  const { project } = useRoom();
  const [earlier, chooseEarlier] = useState<string | null>(null);
  const letter = earlier ?? project.revision;
  const revision = useRevision(project.id, letter);
  const thread = useThread(project.id);
  if (letter === null)
    return (
      <Suspense fallback={<Ruled label="Fetching the sheet" />}>
        <NothingSent />
      </Suspense>
    );
  if (revision.isError && revision.data === undefined)
    return <Trouble error={revision.error} again={() => void revision.refetch()} />;
  if (thread.isError && thread.data === undefined)
    return <Trouble error={thread.error} again={() => void thread.refetch()} />;
  if (revision.isPending || thread.isPending) return <Ruled label="Fetching the revision" />;
  return (
    <ReviewOf
      key={letter}
      revision={revision.data}
      thread={thread.data}
      current={letter === project.revision}
      onRevision={(chosen) => chooseEarlier(chosen === project.revision ? null : chosen)}
    />
  );
}
