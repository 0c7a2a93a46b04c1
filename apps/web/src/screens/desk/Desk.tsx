import type { ProjectSummary } from "@cornerway/schema";
import { useNavigate } from "@tanstack/react-router";
import { CautionLine } from "../../controls/CautionLine.tsx";
import { Ruled } from "../../controls/Ruled.tsx";
import { Trouble } from "../../controls/Trouble.tsx";
import { useProjects } from "../../data/project.ts";
import { useSession } from "../../data/session.ts";
import { DeskTable } from "./DeskTable.tsx";
import { SignOut } from "./SignOut.tsx";
import { Street } from "./Street.tsx";
import { WaitsForMe } from "./WaitsForMe.tsx";
import "./desk.css";

/** What waits for me, and all projects as one street. */
export function Desk() {
  const projects = useProjects();
  const session = useSession();
  const navigate = useNavigate();
  const open = ({ id }: ProjectSummary) => void navigate({ to: "/projects/$projectId", params: { projectId: id } });
  if (projects.isPending) return <Ruled label="Fetching the desk" />;
  if (projects.isError) return <Trouble error={projects.error} again={() => void projects.refetch()} />;
  const waiting = projects.data.filter(({ waitsFor, roles }) => waitsFor !== null && roles.includes(waitsFor));
  return (
    <main className="desk-page">
      <title>Desk · Cornerway</title>
      <div className="desk-sheet">
        <header className="desk-head">
          <h1>{greeting(waiting.length, firstName(session.data?.person.name ?? ""))}</h1>
          <SignOut />
        </header>
        <WaitsForMe projects={waiting} onOpen={open} />
        <Street projects={projects.data} onOpen={open} />
        <DeskTable projects={projects.data} onOpen={open} />
        <CautionLine />
      </div>
    </main>
  );
}

const counts = ["Nothing waits", "One thing waits", "Two things wait", "Three things wait", "Four things wait"];

const greeting = (count: number, name: string) => `${counts[count] ?? `${count} things wait`} for you, ${name}.`;

const firstName = (name: string) => name.split(" ")[0] ?? name;
