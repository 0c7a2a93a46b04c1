import { may } from "@cornerway/schema";
import type { Project, Session } from "@cornerway/schema";
import { useQuery } from "@tanstack/react-query";
import { Outlet, useParams } from "@tanstack/react-router";
import { Ruled } from "../controls/Ruled.tsx";
import { Trouble } from "../controls/Trouble.tsx";
import { openDraftStore } from "../data/draft/open-draft-store.ts";
import type { DraftStore } from "../data/draft/draft-store.ts";
import { isProblem } from "../data/http.ts";
import { useProject } from "../data/project.ts";
import { useSession } from "../data/session.ts";
import { LiveRegion, useSay } from "./LiveRegion.tsx";
import { RoomContext } from "./room-context.ts";
import { useLive } from "./use-live.ts";

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
  const draft = useQuery({
    queryKey: ["draft-store", project.id],
    queryFn: () => openDraftStore(project.id),
    enabled: readsDraft,
    staleTime: Infinity,
    gcTime: 0,
  });
  if (!readsDraft) return <Lines project={project} me={me} draft={null} />;
  if (draft.isPending) return <Ruled label="Fetching the draft" />;
  if (draft.isError) return <Trouble error={draft.error} again={() => void draft.refetch()} />;
  return <Lines project={project} me={me} draft={draft.data} />;
}

function Lines({ project, me, draft }: OfProject & { draft: DraftStore | null }) {
  const live = useLive(project, draft);
  const { sentence, say } = useSay();
  return (
    <RoomContext value={{ project, me, draft, ...live, say }}>
      <Outlet />
      <LiveRegion sentence={sentence} />
    </RoomContext>
  );
}
