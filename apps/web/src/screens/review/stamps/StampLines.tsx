import type { StampNow } from "@cornerway/schema";
import { dayAndTimeOf } from "../../../controls/calendar.ts";
import { useStamps } from "../../../data/stamp.ts";
import { useRoom } from "../../../room/room-context.ts";
import type { NameOf } from "../../../wording/name-of.ts";
import { standingSentence } from "../../../wording/standing-sentence.ts";

/** What the stamps on a revision say, the whole first, and whether each is still on what is there. */
export function StampLines({ letter, nameOf }: { letter: string; nameOf: NameOf }) {
  const { project } = useRoom();
  const stamps = (useStamps(project.id).data ?? []).filter(({ stamp }) => stamp.revision === letter);
  const whole = stamps.filter(({ stamp }) => stamp.elementId === undefined);
  const items = stamps.filter(({ stamp }) => stamp.elementId !== undefined);
  return [...whole, ...items].map((each) => <StampLine key={each.stamp.id} now={each} nameOf={nameOf} />);
}

function StampLine({ now: { stamp, standing }, nameOf }: { now: StampNow; nameOf: NameOf }) {
  const { elementId, disposition, wording, text, author, pressedAt, revision } = stamp;
  const on = elementId === undefined ? `Revision ${revision}` : nameOf(elementId);
  return (
    <blockquote className="comment hand-engineer">
      <p>
        <b>
          {on}: {wording ?? disposition}
        </b>
        {wording === undefined ? "" : ` (${disposition})`}
      </p>
      <p>{text}</p>
      <footer>
        {author.name} on the stamp, {dayAndTimeOf(pressedAt)}.{" "}
        {standing.state === "stale" ? standingSentence(standing, nameOf) : null}
      </footer>
    </blockquote>
  );
}
