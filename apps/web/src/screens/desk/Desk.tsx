import type { ProjectSummary } from "@cornerway/schema";
import { Link, useNavigate } from "@tanstack/react-router";
import { CautionLine } from "../../controls/CautionLine.tsx";
import { Ruled } from "../../controls/Ruled.tsx";
import { Trouble } from "../../controls/Trouble.tsx";
import { useNotices } from "../../data/notice.ts";
import { useOwed } from "../../data/owed.ts";
import { useProjects } from "../../data/project.ts";
import { useSession } from "../../data/session.ts";
import { greeting } from "../../wording/greeting.ts";
import { sideOf } from "../../wording/owed-words.ts";
import { stepForMe } from "../../wording/whose-turn.ts";
import { DeskLeaders } from "./DeskLeaders.tsx";
import { DeskTable } from "./DeskTable.tsx";
import { KeptProjects } from "./KeptProjects.tsx";
import { OwedTable } from "./OwedTable.tsx";
import { SignOut } from "./SignOut.tsx";
import { Street } from "./Street.tsx";
import { WeekSpine } from "./WeekSpine.tsx";
import { WaitsForMe } from "./WaitsForMe.tsx";
import "./desk.css";

/** What waits for me, and all projects as one street. */
export function Desk() {
  const projects = useProjects();
  const session = useSession();
  const administrator = session.data?.person.administrator ?? false;
  const hasAccount = session.data?.person.byLink !== true;
  const name = session.data?.person.name ?? "";
  const unseen = useNotices(hasAccount).data?.unseen ?? 0;
  const owed = useOwed().data ?? [];
  const navigate = useNavigate();
  const open = ({ id }: ProjectSummary) => void navigate({ to: "/projects/$projectId", params: { projectId: id } });
  const openStep = (project: ProjectSummary) =>
    stepForMe(project) === "confirm the engineer"
      ? void navigate({ to: "/projects/$projectId/people", params: { projectId: project.id } })
      : open(project);
  if (projects.isPending) return <Ruled label="Fetching the desk" />;
  if (projects.data === undefined) return <Trouble error={projects.error} again={() => void projects.refetch()} />;
  const rolesIn = (projectId: string) => projects.data?.find(({ id }) => id === projectId)?.roles ?? [];
  const owedByMe = owed.filter(({ projectId, owedBy }) => sideOf(owedBy, rolesIn(projectId)) === "you").length;
  const waiting = projects.data.filter((project) => stepForMe(project) !== null);
  // In the order of what waits above, so that no leader runs over another's house.
  const street = [...waiting, ...projects.data.filter((project) => !waiting.includes(project))];
  return (
    <main className="desk-page">
      <title>Desk · Cornerway</title>
      <WeekSpine projects={projects.data} />
      <div className="desk-sheet">
        <header className="desk-head">
          <h1>{greeting(waiting.length, owedByMe, hasAccount ? firstName(name) : name)}</h1>
          <nav className="desk-way" aria-label="Desk">
            {administrator && (
              <Link className="command" to="/start-project">
                Start a project
              </Link>
            )}
            <Link className="command command-quiet" to="/help">
              How to read the sheets
            </Link>
            {hasAccount && (
              <>
                <Link className="command command-quiet" to="/notices">
                  {newWords(unseen)}
                </Link>
                <Link className="command command-quiet" to="/account">
                  Your account
                </Link>
              </>
            )}
            <SignOut />
          </nav>
        </header>
        <div className="desk-plot">
          <WaitsForMe projects={waiting} onOpen={openStep} />
          <Street projects={street} onOpen={open} />
          <DeskLeaders drawn={projects.data} />
        </div>
        <OwedTable />
        {projects.data.length > 0 && <DeskTable projects={projects.data} onOpen={open} />}
        {projects.data.length === 0 && !administrator && (
          <section className="desk-empty">
            <h2>No sheets are yours yet</h2>
            <p>Whoever runs a project asks you in by your address. Its building then stands here, in the street.</p>
          </section>
        )}
        {administrator && <KeptProjects />}
        <CautionLine />
      </div>
    </main>
  );
}

const newWords = (unseen: number) => (unseen === 0 ? "What is new" : `What is new: ${unseen}`);

const firstName = (name: string) => name.split(" ")[0] ?? name;
