import type { MarkDispositionNow, Revision, SealState } from "@cornerway/schema";
import { dayAndTimeOf } from "../../controls/calendar.ts";
import { fileAddress } from "../../data/file.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { namesIn } from "../../wording/name-of.ts";
import { standingSentence } from "../../wording/standing-sentence.ts";
import { DispositionForm } from "./DispositionForm.tsx";
import { useMarkSentence } from "./use-mark-sentence.ts";

/** Marks that stand in the way, with what the engine says of each and, beside it, what the engineer does. */
export function MarksSection({ seal, revision }: { seal: SealState; revision: Revision }) {
  const { project } = useRoom();
  const markSentence = useMarkSentence(revision);
  const open = seal.hindrances.flatMap((each) => (each.why === "mark" ? [each.markId] : []));
  const mayDispose = whyNot(project, "dispose-mark") === undefined;
  if (open.length === 0 && seal.dispositions.length === 0) return null;
  return (
    <section aria-labelledby="seal-marks">
      <h2 className="caption" id="seal-marks">
        The engineer&apos;s own dispositions
      </h2>
      {seal.dispositions.map((each) => (
        <DispositionLines key={each.disposition.id} now={each} revision={revision} sentence={markSentence} />
      ))}
      {mayDispose && open.length > 0 ? (
        <details className="matter">
          <summary>{open.length === 1 ? "1 mark has" : `${open.length} marks have`} no disposition of yours</summary>
          {open.map((markId) => (
            <details className="matter" key={markId}>
              <summary>{markSentence(markId)}</summary>
              <DispositionForm revision={revision} markId={markId} />
            </details>
          ))}
        </details>
      ) : null}
    </section>
  );
}

function DispositionLines({
  now: { disposition, stands, standing },
  revision,
  sentence,
}: {
  now: MarkDispositionNow;
  revision: Revision;
  sentence: (markId: string) => string;
}) {
  const { project } = useRoom();
  const { number, markId, reason, calculation, author, disposedAt } = disposition;
  return (
    <div className="matter">
      <p>{sentence(markId)}</p>
      <blockquote className="comment hand-engineer">
        <p>{reason}</p>
        <footer>
          Disposition {number}, {author.name}, {dayAndTimeOf(disposedAt)},{" "}
          <a href={fileAddress(project.id, calculation.fileId)} download>
            with this calculation
          </a>
          . {standingSentence(standing, namesIn(revision.scheme))}
        </footer>
      </blockquote>
      {stands ? null : (
        <p className="matter-stale">This disposition is stale: the mark or what it covers has changed.</p>
      )}
    </div>
  );
}
