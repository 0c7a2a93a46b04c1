import type { CheckNow, Revision, SealState } from "@cornerway/schema";
import { dayAndTimeOf } from "../../controls/calendar.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { namesIn } from "../../wording/name-of.ts";
import { standingSentence } from "../../wording/standing-sentence.ts";
import { CheckForm } from "./CheckForm.tsx";

/** What a second engineer found, and where they say it. */
export function ChecksSection({ seal, revision }: { seal: SealState; revision: Revision }) {
  const { project } = useRoom();
  return (
    <section aria-labelledby="seal-checks">
      <h2 className="caption" id="seal-checks">
        Checked by a second engineer
      </h2>
      {seal.checks.length === 0 ? <p>Nobody has checked a revision yet.</p> : null}
      {seal.checks.toReversed().map((each) => (
        <CheckLines key={each.check.id} now={each} revision={revision} />
      ))}
      {whyNot(project, "check-revision") === undefined ? <CheckForm revision={revision} /> : null}
    </section>
  );
}

function CheckLines({ now: { check, standing }, revision }: { now: CheckNow; revision: Revision }) {
  const { number, outcome, text, points, author, checkedAt } = check;
  return (
    <blockquote className="comment hand-checker">
      <p>
        <b>
          {outcome === "agrees"
            ? "Agrees."
            : points.length === 1
              ? "1 point left open."
              : `${points.length} points left open.`}
        </b>{" "}
        {text}
      </p>
      {points.length === 0 ? null : (
        <ol>
          {points.map((point) => (
            <li key={point.id}>{point.text}</li>
          ))}
        </ol>
      )}
      <footer>
        Check {number}, {author.name}, {dayAndTimeOf(checkedAt)}. {standingSentence(standing, namesIn(revision.scheme))}
      </footer>
    </blockquote>
  );
}
