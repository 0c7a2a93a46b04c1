import { RoomSpine } from "../../room/RoomSpine.tsx";
import { RoomTitleBlock } from "../../room/RoomTitleBlock.tsx";
import { useRoom } from "../../room/room-context.ts";
import { useSheetKeys } from "../../room/use-sheet-keys.ts";
import { SheetFrame } from "../../sheet/SheetFrame.tsx";
import "./compare.css";

/** Sheet 4 while there are not two revisions. It fills by itself when the second one arrives. */
export function NothingToCompare({ sent }: { sent: number }) {
  const { project } = useRoom();
  useSheetKeys({});
  return (
    <SheetFrame
      title={`Sheet 4, Compare, ${project.name}`}
      spine={<RoomSpine draftMoves={0} currentLetter={project.revision} />}
      field={() => (
        <section className="nothing-to-compare">
          <h2>{sent === 0 ? "Nothing was sent yet" : `Revision ${project.revision ?? ""} stands alone`}</h2>
          <p>
            Two revisions are laid over each other here as soon as {sent === 0 ? "two are" : "the next one is"} sent.
          </p>
        </section>
      )}
      titleBlock={
        <RoomTitleBlock
          sheet={4}
          scale="none"
          revision={project.revision}
          verdict="not checked"
          verdictLine="Nothing to compare"
        />
      }
    />
  );
}
