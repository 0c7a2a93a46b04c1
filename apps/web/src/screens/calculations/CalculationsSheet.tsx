import { useState } from "react";
import { readsChecks, useRevisionChecks } from "../../checks/check-source.ts";
import { useChecks } from "../../checks/use-checks.tsx";
import { Ruled } from "../../controls/Ruled.tsx";
import { Trouble } from "../../controls/Trouble.tsx";
import { useRevision } from "../../data/revision.ts";
import { wholeWords } from "../../notes/notes-from-marks.ts";
import { AssessmentLine } from "../../room/AssessmentLine.tsx";
import { RoomSpine } from "../../room/RoomSpine.tsx";
import { RoomTitleBlock } from "../../room/RoomTitleBlock.tsx";
import { useRoom } from "../../room/room-context.ts";
import { useLookingPresence } from "../../room/use-looking-presence.ts";
import { useSheetKeys } from "../../room/use-sheet-keys.ts";
import { PartStrip } from "../../sheet/PartStrip.tsx";
import { SheetFrame } from "../../sheet/SheetFrame.tsx";
import { calculationParts } from "./calculation-parts.ts";
import { CalculationsMargin } from "./CalculationsMargin.tsx";
import { CalculationsPage } from "./CalculationsPage.tsx";
import { NoCalculations } from "./NoCalculations.tsx";

/** Sheet 6: what stands behind the verdicts of the revision last sent, or of an earlier one chosen on the spine. */
export function CalculationsSheet() {
  const { project } = useRoom();
  const [earlier, chooseEarlier] = useState<string | null>(null);
  const letter = earlier ?? project.revision;
  const revision = useRevision(project.id, letter);
  const source = useRevisionChecks(project, revision.data);
  const checks = useChecks(source, null);
  useSheetKeys({});
  useLookingPresence(6, null);
  if (revision.isError && revision.data === undefined)
    return <Trouble error={revision.error} again={() => void revision.refetch()} />;
  const result = revision.data?.result ?? null;
  const verdict = revision.data?.verdict ?? "not checked";
  return (
    <SheetFrame
      title={`Sheet 6, Calculations, ${project.name}`}
      spine={
        <RoomSpine
          draftMoves={0}
          currentLetter={letter}
          onChoose={(chosen) => chooseEarlier(chosen === project.revision ? null : chosen)}
        />
      }
      levels={
        source?.report == null ? null : (
          <PartStrip
            heading="Pages"
            parts={calculationParts}
            onChoose={(id) => document.getElementById(id)?.scrollIntoView({ block: "start" })}
          />
        )
      }
      field={() => (
        <div className="calculations">
          {letter === null ? null : <AssessmentLine project={project} letter={letter} />}
          {letter !== null && revision.isPending ? (
            <Ruled label="Fetching the revision" />
          ) : result?.strength === undefined || !readsChecks(project.roles) ? (
            <NoCalculations letter={letter} result={result} owner={!readsChecks(project.roles)} />
          ) : source?.report == null ? (
            <Ruled label="Fetching the calculations" />
          ) : (
            <CalculationsPage
              letter={letter ?? ""}
              scheme={source.scheme}
              assessment={result}
              strength={result.strength}
              report={source.report}
              onOpen={checks.open}
            />
          )}
          {checks.paper}
        </div>
      )}
      margin={<CalculationsMargin result={result} report={source?.report ?? null} />}
      titleBlock={
        <RoomTitleBlock
          sheet={6}
          scale="none"
          revision={letter}
          verdict={verdict}
          verdictLine={letter === null ? "Nothing was sent yet" : wholeWords(verdict)}
        />
      }
    />
  );
}
