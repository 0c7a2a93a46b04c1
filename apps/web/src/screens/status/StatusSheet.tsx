import type { Mark } from "@cornerway/schema";
import { useMemo } from "react";
import { Ruled } from "../../controls/Ruled.tsx";
import { Trouble } from "../../controls/Trouble.tsx";
import { useRevision, useRevisions } from "../../data/revision.ts";
import { useThread } from "../../data/thread.ts";
import { useRoom } from "../../room/room-context.ts";
import { useLookingPresence } from "../../room/use-looking-presence.ts";
import { useSheetKeys } from "../../room/use-sheet-keys.ts";
import { useUnits } from "../../units/use-units.ts";
import { StatusPage } from "./StatusPage.tsx";
import { hindrances } from "./hindrances.ts";

const noMarks: readonly Mark[] = [];

/** Sheet 5: where the project stands, for the owner. It changes by itself whenever someone acts. */
export function StatusSheet() {
  const { project, me } = useRoom();
  const revision = useRevision(project.id, project.revision);
  const revisions = useRevisions(project.id);
  const thread = useThread(project.id);
  useSheetKeys({});
  useLookingPresence(5, null);
  const units = useUnits();
  const inTheWay = useMemo(
    () =>
      hindrances({
        marks: revision.data?.result?.marks ?? noMarks,
        scope: revision.data?.result?.scope ?? null,
        requests: thread.data?.requests ?? [],
        scheme: revision.data?.scheme ?? null,
        revision: project.revision,
        units,
      }),
    [revision.data, thread.data, project.revision, units],
  );
  if (revision.isError && revision.data === undefined)
    return <Trouble error={revision.error} again={() => void revision.refetch()} />;
  if (revisions.isError && revisions.data === undefined)
    return <Trouble error={revisions.error} again={() => void revisions.refetch()} />;
  if (revisions.isPending || (project.revision !== null && revision.isPending))
    return <Ruled label="Fetching where it stands" />;
  return (
    <StatusPage
      project={project}
      reader={me.name}
      revision={revision.data ?? null}
      revisions={revisions.data.toSorted((a, b) => (a.sentAt < b.sentAt ? 1 : -1))}
      inTheWay={inTheWay}
      requests={thread.data?.requests ?? []}
    />
  );
}
