import { emptyScheme } from "@cornerway/schema";
import { useLookingHand } from "../../hand/use-looking-hand.ts";
import { PaperSheet } from "../../paper/PaperSheet.tsx";
import { useEye } from "../../paper/use-eye.ts";
import { RoomSpine } from "../../room/RoomSpine.tsx";
import { RoomTitleBlock } from "../../room/RoomTitleBlock.tsx";
import { useRoom } from "../../room/room-context.ts";
import { useSheetKeys } from "../../room/use-sheet-keys.ts";

const none: ReadonlySet<string> = new Set();

/** Sheet 3 before the first revision. It fills by itself when one arrives. */
export function NothingSent() {
  const { project } = useRoom();
  const eye = useEye(emptyScheme);
  const hand = useLookingHand();
  useSheetKeys({});
  return (
    <PaperSheet
      title={`Sheet 3, Review, ${project.name}`}
      eye={eye}
      hand={hand}
      scheme={emptyScheme}
      laidBy={emptyScheme}
      assessment={null}
      answeredMarkIds={none}
      revisionLetters={[]}
      heading="Nothing was sent yet"
      notes={[]}
      chosenNoteId={null}
      onNote={() => undefined}
      slip={
        <p>
          The architect has not sent a revision. It appears here when it is sent; this page need not be fetched again.
        </p>
      }
      spine={<RoomSpine draftMoves={0} currentLetter={null} />}
      titleBlock={
        <RoomTitleBlock
          sheet={3}
          scale="as noted"
          revision={null}
          verdict="not checked"
          verdictLine="Nothing to review"
        />
      }
    />
  );
}
