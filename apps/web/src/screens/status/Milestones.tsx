import type { Project, RevisionSummary } from "@cornerway/schema";
import { dayOf } from "../../controls/calendar.ts";

interface Milestone {
  name: string;
  line: string;
  state: "passed" | "here" | "ahead";
}

/** The way from drawing to permit, with where the project is on it. */
export function Milestones({ project, revisions }: { project: Project; revisions: readonly RevisionSummary[] }) {
  return (
    <ol className="status-way">
      {milestones(project, revisions).map(({ name, line, state }) => (
        <li key={name} className={`way-${state}`} aria-current={state === "here" ? "step" : undefined}>
          <span className="way-name">{name}</span>
          <span className="way-line">{line}</span>
        </li>
      ))}
    </ol>
  );
}

function milestones(project: Project, revisions: readonly RevisionSummary[]): Milestone[] {
  const [last] = revisions;
  const first = revisions.at(-1);
  const engineer = project.members.find(({ roles }) => roles.includes("engineer"))?.name ?? "the engineer";
  const checked = last?.assessment === "done";
  const reviewed = last?.stamp ?? null;
  return [
    {
      name: "Drawn",
      line: first === undefined ? "being drawn" : dayOf(first.sentAt),
      state: last === undefined ? "here" : "passed",
    },
    {
      name: "Load path",
      line: checked ? "looked through" : "waits",
      state: last === undefined ? "ahead" : checked ? "passed" : "here",
    },
    {
      name: "Reviewed",
      line:
        reviewed === null
          ? last === undefined
            ? ""
            : `with ${engineer}`
          : `${reviewed.disposition}, ${dayOf(reviewed.pressedAt)}`,
      state: last !== undefined && checked ? "here" : "ahead",
    },
    { name: "Permit set", line: "", state: "ahead" },
    { name: "Permit", line: "", state: "ahead" },
  ];
}
