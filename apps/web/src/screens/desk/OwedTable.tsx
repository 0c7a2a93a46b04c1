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
  const { projectName, owedBy, owedTo, neededBy, text } = owed;
  const who = sideOf(owedBy, mine);
  return (
    <tr>
      <th scope="row">{projectName}</th>
      <td className={`hand-${owedBy} desk-owed-who`}>
        {who}
        <span className="desk-owed-verb"> {who === "you" ? "owe" : "owes"}</span>
      </td>
      <td className="desk-owed-what">
        <OwedLink owed={owed} />
        <span className="said-by-person desk-owed-words">{text}</span>
      </td>
      <td className={`hand-${owedTo} desk-owed-to`}>{sideOf(owedTo, mine)}</td>
      <td className="desk-owed-by">{neededBy === null ? "" : dateOf(neededBy)}</td>
    </tr>
  );
}

/** To the page where it is done: the survey, the site, sheet 5 for a price, else sheet 3. */
function OwedLink({ owed }: { owed: Owed }) {
  const { projectId, what } = owed;
  const thing = owedThing(owed);
  if (what === "container to judge" || what === "container to repair" || what === "survey to draw")
    return (
      <Link to="/projects/$projectId/survey" params={{ projectId }}>
        {thing}
      </Link>
    );
  if (what === "site item to build" || what === "difference to judge")
    return (
      <Link to="/projects/$projectId/site" params={{ projectId }}>
        {thing}
      </Link>
    );
  return (
    <Link to="/projects/$projectId/sheet/$sheet" params={{ projectId, sheet: what === "price to agree" ? "5" : "3" }}>
      {thing}
    </Link>
  );
}
