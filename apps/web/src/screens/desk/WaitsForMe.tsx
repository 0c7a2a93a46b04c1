import type { ProjectSummary } from "@cornerway/schema";
import { Command } from "../../controls/Command.tsx";
import { dayOf } from "../../controls/calendar.ts";
import { nextStep, stepForMe } from "../../wording/whose-turn.ts";

/** One numbered thing for each project that waits for this person. */
export function WaitsForMe({
  projects,
  onOpen,
}: {
  projects: ProjectSummary[];
  onOpen: (project: ProjectSummary) => void;
}) {
  return (
    <ol className="desk-waits">
      {projects.map((project, at) => (
        <li key={project.id}>
          <span className="desk-number" data-waits={project.id} aria-hidden="true">
            {at + 1}
          </span>
          <Waiting project={project} onOpen={() => onOpen(project)} />
        </li>
      ))}
    </ol>
  );
}

function Waiting({ project, onOpen }: { project: ProjectSummary; onOpen: () => void }) {
  const mine = stepForMe(project) ?? "reader";
  const step = nextStep[mine];
  const since = mine === "confirm the engineer" && project.waitsFor !== "owner" ? null : project.since;
  return (
    <div>
      <p className="caption">
        {project.name} · {project.revision === null ? "draft" : `revision ${project.revision}`}
      </p>
      <h2>{step.heading}</h2>
      <p>{step.sentence}</p>
      <p className="desk-step">
        <Command onPress={onOpen}>{step.command}</Command>
        {since === null ? null : <span className="lettered">since {dayOf(since)}</span>}
      </p>
    </div>
  );
}
