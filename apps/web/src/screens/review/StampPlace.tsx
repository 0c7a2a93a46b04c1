import { newUuid } from "../../tools/new-uuid.ts";
import type { Disposition, Revision, Thread } from "@cornerway/schema";
import { answeredMarks, dispositions, may, stampRefusals, stampRefusalSentence } from "@cornerway/schema";
import { useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { dateOf } from "../../controls/calendar.ts";
import { usePressStamp } from "../../data/stamp.ts";
import { useThread } from "../../data/thread.ts";
import { useRoom } from "../../room/room-context.ts";
import { ReviewStamp } from "../../sheet/ReviewStamp.tsx";
import { nextLetter } from "../../wording/next-letter.ts";
import "./review.css";

export interface StampPlaceProps {
  revision: Revision;
  current: boolean;
  signer: string;
  onCannot: (why: string) => void;
}

/** Where the stamp stands: live for the engineer, an impression once pressed, bare for everyone else. */
export function StampPlace({ revision, current, signer, onCannot }: StampPlaceProps) {
  const { project, say } = useRoom();
  const press = usePressStamp(project.id);
  const { data: thread } = useThread(project.id);
  const [chosen, choose] = useState<Disposition | null>(null);
  const [text, setText] = useState("");
  const [inHand, take] = useState(false);
  const { stamp, letter, contentDigest, resultDigest } = revision;
  if (stamp !== null)
    return (
      <aside className="stamp-place" aria-label="Stamp">
        <ReviewStamp
          state="pressed"
          disposition={stamp.disposition}
          revision={letter}
          date={dateOf(stamp.pressedAt)}
          signer={stamp.author.name}
          text={stamp.text}
        />
      </aside>
    );
  if (!current || !may(project.roles, "press-stamp")) return null;
  const dispatch = () => {
    if (chosen === null) return;
    if (resultDigest === null) return onCannot("This revision is not checked yet, so it cannot be stamped.");
    if (text.trim() === "") return onCannot("Say on the stamp what is to be done.");
    press.mutate(
      {
        id: newUuid(),
        revision: letter,
        disposition: chosen,
        text: text.trim(),
        contentDigest,
        resultDigest,
      },
      { onSuccess: () => say(`Revision ${letter} stamped: ${chosen}.`), onError: (error) => onCannot(error.message) },
    );
  };
  if (!inHand)
    return (
      <aside className="stamp-place" aria-label="Stamp">
        <Command
          engineer
          onPress={() => take(true)}
          asleepBecause={resultDigest === null ? "Not checked yet." : undefined}
        >
          {`Stamp revision ${letter}`}
        </Command>
      </aside>
    );
  return (
    <aside className="stamp-place stamp-in-hand" aria-label="Stamp">
      <ReviewStamp
        state="choosing"
        revision={letter}
        subject={`Revision ${letter} · ${revision.scheme.containers.length} containers`}
        chosen={chosen}
        onChoose={choose}
        next={nextAfter(letter)}
        asleepBecause={asleep(revision, thread)}
        signer={signer}
        text={text}
        onText={setText}
        onPress={dispatch}
        onAside={() => take(false)}
      />
    </aside>
  );
}

const nextAfter = (letter: string): Record<Disposition, string> => ({
  "No exceptions taken": "On, as it is.",
  "Make corrections noted": "On, with the notes in.",
  "Revise and resubmit": `Back to me as revision ${nextLetter(letter)}.`,
  Rejected: "Stops here.",
});

/** Why a disposition is not open: all of what stands in its way. */
function asleep({ result, letter }: Revision, thread: Thread | undefined): Partial<Record<Disposition, string>> {
  if (result === null || thread === undefined)
    return Object.fromEntries(dispositions.map((each) => [each, "Not checked yet."]));
  const answered = answeredMarks(thread.notes, letter);
  const openRequests = thread.requests.filter(({ state }) => state === "open").length;
  return Object.fromEntries(
    dispositions
      .map((each) => [each, stampRefusals(each, { result, answered, openRequests })] as const)
      .filter(([, refusals]) => refusals.length > 0)
      .map(([each, refusals]) => [each, refusals.map(stampRefusalSentence).join(" ")]),
  );
}
