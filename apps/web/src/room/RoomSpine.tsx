import { useRevisions } from "../data/revision.ts";
import { dayOf } from "../controls/calendar.ts";
import { Spine } from "../sheet/Spine.tsx";
import { useRoom } from "./room-context.ts";

/** The binding edge: revisions newest on top, moves not yet sent above them, a stitch for each entry. */
export function RoomSpine({
  draftMoves,
  currentLetter,
  onChoose,
}: {
  draftMoves: number;
  currentLetter: string | null;
  onChoose?: (letter: string | null) => void;
}) {
  const { project } = useRoom();
  const revisions = useRevisions(project.id).data ?? [];
  const newestFirst = revisions.toSorted((a, b) => (a.sentAt < b.sentAt ? 1 : -1));
  return (
    <Spine
      draftMoves={draftMoves}
      revisions={newestFirst.map(({ letter, sentAt }) => ({ letter, date: dayOf(sentAt), entriesSince: 0 }))}
      currentLetter={currentLetter}
      entriesBefore={project.last}
      entries={project.last}
      onChoose={onChoose}
    />
  );
}
