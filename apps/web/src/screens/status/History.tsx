import type { RevisionSummary } from "@cornerway/schema";
import { dayOf } from "../../controls/calendar.ts";
import { Triangle } from "../../look/Triangle.tsx";

/** Revisions and stamps, newest first. */
export function History({ revisions }: { revisions: readonly RevisionSummary[] }) {
  if (revisions.length === 0) return <p>Nothing yet.</p>;
  return (
    <ol className="status-revisions">
      {revisions.map(({ letter, sentAt, sentBy, remark, stamp }, at) => (
        <li key={letter}>
          <Triangle letter={letter} current={at === 0} sizePx={22} />
          <span className="lettered">{dayOf(sentAt)}</span>
          <span>
            {letter} sent by {sentBy.name}
            {remark === null ? (
              "."
            ) : (
              <>
                : <em>{remark}</em>
              </>
            )}
            {stamp === null ? null : (
              <>
                {" "}
                Stamped <em>{stamp.disposition}</em> by {stamp.author.name}.
              </>
            )}
          </span>
        </li>
      ))}
    </ol>
  );
}
