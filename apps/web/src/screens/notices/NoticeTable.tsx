import type { Notice } from "@cornerway/schema";
import { Link } from "@tanstack/react-router";
import { dayAndTimeOf } from "../../controls/calendar.ts";
import { PageScroll } from "../../sheet/PageScroll.tsx";
import { useUnits } from "../../units/use-units.ts";
import { entrySentence } from "../../wording/entry-sentence.ts";

/** Newest first; what is not seen yet says so in a word, not by its weight alone. */
export function NoticeTable({ notices }: { notices: readonly Notice[] }) {
  const units = useUnits();
  if (notices.length === 0) return <p>Nothing that others did has concerned your parts so far.</p>;
  return (
    <PageScroll label="Table of what is new">
      <table className="notices-table">
        <thead>
          <tr className="caption">
            <th scope="col">When</th>
            <th scope="col">Sheet set</th>
            <th scope="col">Who</th>
            <th scope="col">What</th>
          </tr>
        </thead>
        <tbody>
          {notices.map(({ projectId, projectName, entry, seen }) => (
            <tr key={`${projectId} ${entry.number}`} className={seen ? undefined : "notices-unseen"}>
              <td>
                {seen ? null : <b className="notices-new">new</b>}
                {dayAndTimeOf(entry.at)}
              </td>
              <th scope="row">
                <Link to="/projects/$projectId/sheet/$sheet" params={{ projectId, sheet: "7" }}>
                  {projectName}
                  <small>entry {entry.number}</small>
                </Link>
              </th>
              <td className={`hand-${entry.actor.role}`}>
                {entry.actor.name}
                <small>{entry.actor.role}</small>
              </td>
              <td>{entrySentence(entry.payload, () => "the drawing", new Set(), units)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </PageScroll>
  );
}
