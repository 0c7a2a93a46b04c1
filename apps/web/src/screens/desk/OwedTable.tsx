import type { Owed } from "@cornerway/schema";
import { Link } from "@tanstack/react-router";
import { dateOf } from "../../controls/calendar.ts";
import { useOwed } from "../../data/owed.ts";
import { useProjects } from "../../data/project.ts";
import { PageScroll } from "../../sheet/PageScroll.tsx";
import { owedThing, sideOf } from "../../wording/owed-words.ts";

/** Who owes whom what in all projects of one desk, what is needed first coming first. */
export function OwedTable() {
  const owed = useOwed().data ?? [];
  if (owed.length === 0) return null;
  return (
    <section className="desk-owed" aria-labelledby="desk-owed">
      <h2 className="caption" id="desk-owed">
        Who owes whom what
      </h2>
      <PageScroll label="Table of who owes whom what">
        <table className="desk-owed-table">
          <thead>
            <tr className="caption">
              <th scope="col">Sheet set</th>
              <th scope="col">Who</th>
              <th scope="col">Owes</th>
              <th scope="col">To</th>
              <th scope="col">Needed by</th>
            </tr>
          </thead>
          <tbody>
            {owed.map((each) => (
              <OwedRow key={`${each.projectId} ${each.what} ${each.number}`} owed={each} />
            ))}
          </tbody>
        </table>
      </PageScroll>
    </section>
  );
}

function OwedRow({ owed }: { owed: Owed }) {
  const mine = useProjects().data?.find(({ id }) => id === owed.projectId)?.roles ?? [];
  const { projectId, projectName, owedBy, owedTo, neededBy, text } = owed;
  return (
    <tr>
      <th scope="row">{projectName}</th>
      <td className={`hand-${owedBy}`}>{sideOf(owedBy, mine)}</td>
      <td>
        <Link to="/projects/$projectId/sheet/$sheet" params={{ projectId, sheet: "3" }}>
          {owedThing(owed)}
        </Link>
        <span className="said-by-person desk-owed-words">{text}</span>
      </td>
      <td className={`hand-${owedTo}`}>{sideOf(owedTo, mine)}</td>
      <td>{neededBy === null ? "" : dateOf(neededBy)}</td>
    </tr>
  );
}
