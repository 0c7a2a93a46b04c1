import { may } from "@cornerway/schema";
import type { Project, Session } from "@cornerway/schema";
import { Outlet, useParams } from "@tanstack/react-router";
import { lazy, Suspense } from "react";
import { Ruled } from "../controls/Ruled.tsx";
import { Trouble } from "../controls/Trouble.tsx";
import type { DraftStore } from "../data/draft/draft-store.ts";
import { useOpenedDraft } from "../data/draft/use-opened-draft.ts";
import { isProblem } from "../data/http.ts";
import { useProject } from "../data/project.ts";
import { useSession } from "../data/session.ts";
import { LiveRegion, useSay } from "./LiveRegion.tsx";
import { RoomContext } from "./room-context.ts";
import { useLive } from "./use-live.ts";

/** The record is checked beside the sheet, which does not wait for it. */
const RecordBroken = lazy(async () => ({ default: (await import("./RecordBroken.tsx")).RecordBroken }));

/** Opens a project: who is in it, its draft, and the live line on which everything arrives. */
export function ProjectRoom() {
  const { projectId } = useParams({ from: "/projects/$projectId" });
  const session = useSession();
  const project = useProject(projectId);
  // A project read before stays open while the line is down: its room holds moves that are not sent yet.
  if (project.isError && (project.data === undefined || isProblem(project.error, "not-found")))
    return <Trouble error={project.error} again={() => void project.refetch()} />;
  if (project.data === undefined || session.data === undefined || session.data === null)
    return <Ruled label="Fetching the sheet" />;
  return <DraftOf key={projectId} project={project.data} me={session.data.person} />;
}

type OfProject = { project: Project; me: Session["person"] };

function DraftOf({ project, me }: OfProject) {
  const readsDraft = may(project.roles, "read-draft");
  const { opened, again } = useOpenedDraft(me.id, project.id, readsDraft);
  if (!readsDraft) return <Lines project={project} me={me} draft={null} />;
  if (opened === null) return <Ruled label="Fetching the draft" />;
  if (opened.store === null) return <Trouble error={opened.error} again={again} />;
  return <Lines project={project} me={me} draft={opened.store} />;
}

function Lines({ project, me, draft }: OfProject & { draft: DraftStore | null }) {
  const live = useLive(project, me.id, draft);
  const { sentence, say } = useSay();
  return (
    <RoomContext value={{ project, me, draft, ...live, say }}>
      <Suspense fallback={null}>
        <RecordBroken projectId={project.id} lineHolds={live.lineDownSince === null} />
      </Suspense>
      <Outlet />
      <LiveRegion sentence={sentence} />
    </RoomContext>
  );
}
