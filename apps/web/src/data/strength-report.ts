import { CheckWorking, StrengthReport } from "@cornerway/schema";
import { useQuery } from "@tanstack/react-query";
import { api, read } from "./api/client.ts";
import { revisionKey } from "./revision.ts";

const place = (projectId: string, letter: string) => ({ path: { projectId, letter } });

export const reportKey = (projectId: string, letter: string, resultDigest: string) =>
  [...revisionKey(projectId, letter), "report", resultDigest] as const;

/** What stands behind a revision's verdicts of strength; nothing is asked while it has no result, or none of strength. */
export const useStrengthReport = (projectId: string, letter: string, resultDigest: string | null) =>
  useQuery({
    queryKey: reportKey(projectId, letter, resultDigest ?? ""),
    queryFn: () =>
      read(
        StrengthReport,
        api.GET("/api/projects/{projectId}/revisions/{letter}/assessment/report", { params: place(projectId, letter) }),
      ),
    enabled: resultDigest !== null,
    staleTime: Infinity,
  });

export const fetchWorking = (projectId: string, letter: string, id: string): Promise<CheckWorking> =>
  read(
    CheckWorking,
    api.GET("/api/projects/{projectId}/revisions/{letter}/assessment/working", {
      params: { ...place(projectId, letter), query: { id } },
    }),
  );
