import { useMemo } from "react";
import { useRecord } from "../data/record.ts";
import { useRevisions } from "../data/revision.ts";
import { dayOf } from "../controls/calendar.ts";
import { Spine } from "../sheet/Spine.tsx";
import { useRoom } from "./room-context.ts";
import { spineStitches } from "./spine-stitches.ts";

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
  const record = useRecord(project.id).data;
  const stitches = useMemo(() => spineStitches(record ?? []), [record]);
  const newestFirst = revisions.toSorted((a, b) => (a.sentAt < b.sentAt ? 1 : -1));
  return (
    <Spine
      draftMoves={draftMoves}
      revisions={newestFirst.map(({ letter, sentAt }) => ({
        letter,
        date: dayOf(sentAt),
        entriesSince: stitches.since.get(letter) ?? 0,
      }))}
      currentLetter={currentLetter}
      entriesBefore={stitches.before}
      entries={Math.max(project.last, stitches.entries)}
      onChoose={onChoose}
    />
  );
}
