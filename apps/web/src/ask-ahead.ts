import { may } from "@cornerway/schema";
import { askAhead } from "./data/draft/draft-ahead.ts";
import { fetchProject, projectKey } from "./data/project.ts";
import { queryClient } from "./data/query-client.ts";
import { fetchSession, mayBeSignedIn, sessionKey } from "./data/session.ts";
import { fetchSheet } from "./room/sheet-parts.ts";

/**
 * Asks at once for what the address says will be needed: who is signed in, the project, its draft and the script of the
 * sheet, which otherwise would be asked for one after the other as each is shown.
 */
export function askForAddress(pathname: string): void {
  const [, projectId, sheet] = /^\/projects\/([0-9a-f-]{36})(?:\/sheet\/([1-7]))?\/?$/.exec(pathname) ?? [];
  if (projectId === undefined || !mayBeSignedIn()) return;
  const opened = async () => {
    const [session, project] = await Promise.all([
      queryClient.fetchQuery({ queryKey: sessionKey, queryFn: fetchSession }),
      fetchProject(projectId),
    ]);
    if (session !== null && may(project.roles, "read-draft")) askAhead(projectId);
    return project; // not before it is known who asked: an answer is kept for them
  };
  void queryClient.prefetchQuery({ queryKey: projectKey(projectId), queryFn: opened });
  // After these, which are small and would wait behind it; what goes wrong is told where the sheet is shown.
  if (sheet !== undefined) void fetchSheet(sheet).catch(() => undefined);
}
