import { useEffect, useMemo, useState } from "react";
import { Ruled } from "../../controls/Ruled.tsx";
import { Trouble } from "../../controls/Trouble.tsx";
import { useRecord } from "../../data/record.ts";
import { useRevision } from "../../data/revision.ts";
import { RoomSpine } from "../../room/RoomSpine.tsx";
import { RoomTitleBlock } from "../../room/RoomTitleBlock.tsx";
import { useRoom } from "../../room/room-context.ts";
import { useLookingPresence } from "../../room/use-looking-presence.ts";
import { useSheetKeys } from "../../room/use-sheet-keys.ts";
import { SheetFrame } from "../../sheet/SheetFrame.tsx";
import { namesIn } from "../../wording/name-of.ts";
import { filterEntries, noFilter } from "./filter-entries.ts";
import { PermitSetSection } from "./PermitSetSection.tsx";
import { ProofSection } from "./ProofSection.tsx";
import { RecordFilters } from "./RecordFilters.tsx";
import { pageLength, pagesOf, RecordPages } from "./RecordPages.tsx";
import { RecordStrip } from "./RecordStrip.tsx";
import { RecordMargin } from "./RecordMargin.tsx";
import { RecordThread } from "./RecordThread.tsx";
import { RunsSection } from "./RunsSection.tsx";
import "./record.css";

/** Sheet 7: every act in order, a stitch each, with its leaf and the head of the tree over all before it. */
export function RecordSheet() {
  const { project, draft, lineDownSince } = useRoom();
  const record = useRecord(project.id);
  const revision = useRevision(project.id, project.revision);
  useSheetKeys({});
  useLookingPresence(7, null);
  const entries = useMemo(() => record.data ?? [], [record.data]);
  const nameOf = useMemo(() => {
    const drawn = entries.flatMap(({ payload }) =>
      payload?.kind === "drawn" ? [...payload.operations, ...payload.inverse] : [],
    );
    return namesIn(draft?.getSnapshot().scheme ?? revision.data?.scheme ?? null, drawn);
  }, [entries, draft, revision.data]);
  const [filter, setFilter] = useState(noFilter);
  const found = useMemo(() => filterEntries(entries, filter, nameOf), [entries, filter, nameOf]);
  const pages = pagesOf(found);
  const [wanted, turnTo] = useState<number | null>(null);
  const page = Math.min(wanted ?? pages - 1, pages - 1);
  const shown = found.slice(page * pageLength, (page + 1) * pageLength);
  /** A thing of its own for each press, so that the same entry is brought into view again. */
  const [sought, seek] = useState<{ number: number } | null>(null);
  useEffect(() => {
    if (sought !== null) document.querySelector(`[data-entry="${sought.number}"]`)?.scrollIntoView({ block: "center" });
  }, [sought]);
  if (record.isError && record.data === undefined)
    return <Trouble error={record.error} again={() => void record.refetch()} />;
  return (
    <SheetFrame
      title={`Sheet 7, Record, ${project.name}`}
      spine={<RoomSpine draftMoves={0} currentLetter={project.revision} />}
      levels={
        <RecordStrip
          entries={entries}
          onEntry={(number) => {
            setFilter(noFilter);
            turnTo(Math.floor(entries.findIndex((entry) => entry.number === number) / pageLength));
            seek({ number });
          }}
        />
      }
      field={() =>
        record.isPending ? (
          <Ruled label="Fetching the record" />
        ) : (
          <RecordThread
            project={project}
            entries={shown}
            whole={entries}
            nameOf={nameOf}
            filters={
              <RecordFilters
                entries={entries}
                filter={filter}
                onFilter={(next) => {
                  setFilter(next);
                  turnTo(null);
                }}
              />
            }
            pages={<RecordPages page={page} pages={pages} onPage={turnTo} />}
          />
        )
      }
      margin={
        <RecordMargin entries={entries}>
          <ProofSection projectId={project.id} lineHolds={lineDownSince === null} />
          <PermitSetSection projectId={project.id} />
          {revision.data === undefined ? null : <RunsSection revision={revision.data} />}
        </RecordMargin>
      }
      titleBlock={
        <RoomTitleBlock
          sheet={7}
          scale="none"
          revision={project.revision}
          verdict={project.verdict}
          remark={`${entries.length} ${entries.length === 1 ? "entry" : "entries"}`}
        />
      }
    />
  );
}
