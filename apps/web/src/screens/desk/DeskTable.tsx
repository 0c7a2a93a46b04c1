import type { ProjectSummary } from "@cornerway/schema";
import { Link } from "@tanstack/react-router";
import { dayOf } from "../../controls/calendar.ts";
import { Triangle } from "../../look/Triangle.tsx";
import { whoseTurn } from "../../wording/whose-turn.ts";

/** Every sheet set in one row each; the name opens it. */
export function DeskTable({
  projects,
  onOpen,
}: {
  projects: ProjectSummary[];
  onOpen: (project: ProjectSummary) => void;
}) {
  return (
    <table className="desk-table">
      <thead>
        <tr className="caption">
          <th scope="col">Sheet set</th>
          <th scope="col">Revision</th>
          <th scope="col">Stamp</th>
          <th scope="col">With</th>
          <th scope="col">Since</th>
          <th scope="col">People</th>
          <th scope="col">Containers</th>
        </tr>
      </thead>
      <tbody>
        {projects.map((project) => (
          <tr key={project.id}>
            <th scope="row">
              <button type="button" className="desk-open" onClick={() => onOpen(project)}>
                {project.name}, {project.place}
              </button>
            </th>
            <td>{project.revision === null ? "none yet" : <Triangle letter={project.revision} current />}</td>
            <td className={project.stamp === null ? "" : "hand-engineer"}>
              {project.stamp?.disposition ?? "Not stamped"}
            </td>
            <td>{whoseTurn(project)}</td>
            <td>{project.since === null ? "" : dayOf(project.since)}</td>
            <td className="desk-people">
              <Link to="/projects/$projectId/people" params={{ projectId: project.id }}>
                Who has a part<span className="unseen"> in {project.name}</span>
              </Link>
            </td>
            <td className="desk-count">{project.revision === null ? "" : project.containers}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
