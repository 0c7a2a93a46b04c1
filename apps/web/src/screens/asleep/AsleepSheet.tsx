import { asleepSheets } from "../../room/asleep-sheets.ts";
import { RoomSpine } from "../../room/RoomSpine.tsx";
import { RoomTitleBlock } from "../../room/RoomTitleBlock.tsx";
import { useRoom } from "../../room/room-context.ts";
import { useSheetKeys } from "../../room/use-sheet-keys.ts";
import { SheetFrame } from "../../sheet/SheetFrame.tsx";
import { sheets } from "../../sheet/contract.ts";
import type { SheetNumber } from "../../sheet/contract.ts";
import "./asleep.css";

/** A sheet that is not drawn yet keeps its place and says why. */
export function AsleepSheet({ sheet }: { sheet: SheetNumber }) {
  const { project } = useRoom();
  useSheetKeys({});
  const name = sheets.find(({ number }) => number === sheet)?.name ?? "";
  return (
    <SheetFrame
      title={`Sheet ${sheet}, ${name}, ${project.name}`}
      spine={<RoomSpine draftMoves={0} currentLetter={project.revision} />}
      field={() => (
        <section className="asleep-sheet">
          <h2>Sheet {sheet} is not drawn yet</h2>
          <p>{asleepSheets.get(sheet)}</p>
        </section>
      )}
      titleBlock={
        <RoomTitleBlock
          sheet={sheet}
          scale="none"
          revision={project.revision}
          verdict="not checked"
          verdictLine="Not drawn yet"
        />
      }
    />
  );
}
