import { useState } from "react";
import { Ruled } from "../../controls/Ruled.tsx";
import { Trouble } from "../../controls/Trouble.tsx";
import { useRevision, useRevisions } from "../../data/revision.ts";
import { useRoom } from "../../room/room-context.ts";
import { isLater } from "../../wording/next-letter.ts";
import { CompareOf } from "./CompareOf.tsx";
import { NothingToCompare } from "./NothingToCompare.tsx";

/** Sheet 4: two revisions over each other, the last two sent unless others are chosen. */
export function CompareSheet() {
  const { project } = useRoom();
  const revisions = useRevisions(project.id);
  const [wanted, want] = useState<readonly string[]>([]);
  const letters = (revisions.data ?? []).map(({ letter }) => letter).toSorted((a, b) => (isLater(a, b) ? 1 : -1));
  const [former, later] = pairOf(letters, wanted);
  const before = useRevision(project.id, former);
  const after = useRevision(project.id, later);
  const failed = [revisions, before, after].find(({ isError, data }) => isError && data === undefined);
  if (failed !== undefined)
    return <Trouble error={failed.error ?? new Error("nothing was read")} again={() => void failed.refetch()} />;
  if (revisions.isPending) return <Ruled label="Fetching the revisions" />;
  if (former === null) return <NothingToCompare sent={letters.length} />;
  if (before.data === undefined || after.data === undefined) return <Ruled label="Fetching two revisions" />;
  return (
    <CompareOf
      key={`${former} ${later}`}
      revisions={{ before: before.data, after: after.data }}
      letters={letters}
      onPair={(one, other) => want([one, other])}
    />
  );
}

/** The two to be compared, the earlier one first; the last two where the wanted ones are not there. */
export function pairOf(letters: readonly string[], wanted: readonly string[]): [string, string] | [null, null] {
  const found = letters.filter((letter) => wanted.includes(letter));
  const [former, later] = found.length === 2 ? found : letters.slice(-2);
  return former === undefined || later === undefined ? [null, null] : [former, later];
}
