import type { ChangeRequest, Project, Revision, RevisionSummary } from "@cornerway/schema";
import { Link } from "@tanstack/react-router";
import { CautionLine } from "../../controls/CautionLine.tsx";
import { NotAgreed } from "../../prices/NotAgreed.tsx";
import { whyNot } from "../../room/room-context.ts";
import { AssessmentLine } from "../../room/AssessmentLine.tsx";
import type { Hindrance } from "./hindrances.ts";
import { History } from "./History.tsx";
import { InTheWay } from "./InTheWay.tsx";
import { InTheWayWithWays } from "./InTheWayWithWays.tsx";
import { Milestones } from "./Milestones.tsx";
import { nextStepWords, standing } from "./standing.ts";
import { StatusDrawing } from "./StatusDrawing.tsx";
import { StatusPrice } from "./StatusPrice.tsx";
import { SheetRow } from "./SheetRow.tsx";
import "./status.css";

export interface StatusPageProps {
  project: Project;
  reader: string;
  revision: Revision | null;
  revisions: RevisionSummary[];
  inTheWay: readonly Hindrance[];
  requests: readonly ChangeRequest[];
}

/** The owner's page: what stands in the way, who acts, what comes next. No figure that an owner cannot use. */
export function StatusPage({ project, reader, revision, revisions, inTheWay, requests }: StatusPageProps) {
  const words = standing(project, inTheWay.length);
  const next = nextStepWords(project);
  return (
    <main className="status">
      <title>{`${project.name}, where it stands · Cornerway`}</title>
      <div className="status-sheet">
        <header className="status-head">
          <div>
            <p className="caption">For {reader === project.client ? reader : `${reader}, ${project.client}`}</p>
            <h1>
              {project.name} {words.heading}
            </h1>
            <p className="status-lead">
              {words.lead}
              {words.said === undefined ? null : <em className="hand-engineer"> {words.said}</em>}
            </p>
            {revision === null ? null : <AssessmentLine project={project} letter={revision.letter} />}
            <CautionLine />
          </div>
          {revision === null ? null : <StatusDrawing project={project} revision={revision} inTheWay={inTheWay} />}
        </header>
        <Milestones project={project} revisions={revisions} />
        <div className="status-columns">
          <section aria-label="What stands in the way">
            <h2 className="caption">What stands in the way</h2>
            {revision === null || whyNot(project, "read-prices") !== undefined ? (
              <InTheWay sent={revision !== null} inTheWay={inTheWay} requests={requests} />
            ) : (
              <InTheWayWithWays {...{ project, revision, inTheWay, requests }} />
            )}
          </section>
          <section aria-label="What it costs">
            <h2 className="caption">Premium over the plain stack</h2>
            <StatusPrice revision={revision} earlier={revisions[1]?.letter ?? null} />
            {requests
              .filter(({ state }) => state === "taken in")
              .map((request) => (
                <NotAgreed key={request.id} request={request} />
              ))}
          </section>
          <section aria-label="Next step and history">
            <h2 className="caption">Next step</h2>
            <p className="status-next">{next.heading}</p>
            <p>{next.sentence}</p>
            <h2 className="caption status-history">History</h2>
            <History revisions={revisions} />
          </section>
        </div>
        <footer className="status-foot">
          <Link to="/">To the desk</Link>
          <Link to="/projects/$projectId/survey" params={{ projectId: project.id }}>
            Survey of the containers
          </Link>
          <Link to="/projects/$projectId/site" params={{ projectId: project.id }}>
            The site
          </Link>
          <SheetRow projectId={project.id} />
        </footer>
      </div>
    </main>
  );
}
