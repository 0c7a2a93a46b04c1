import { CheckNow, Confirmation, MarkDisposition, SealIssueNow, SealState } from "@cornerway/schema";
import type { IssueForSeal, NewCheck, NewConfirmation, NewMarkDisposition, NewSealedCopy } from "@cornerway/schema";
import { useMutation, useQuery } from "@tanstack/react-query";
import { api, read } from "./api/client.ts";
import { projectKey } from "./project.ts";
import { readAgain } from "./read-again.ts";

const at = (projectId: string) => ({ params: { path: { projectId } } });

export const sealKey = (projectId: string) => [...projectKey(projectId), "seal"] as const;
export const fetchSeal = (projectId: string) =>
  read(SealState, api.GET("/api/projects/{projectId}/seal", at(projectId)));
export const useSeal = (projectId: string) =>
  useQuery({ queryKey: sealKey(projectId), queryFn: () => fetchSeal(projectId) });

/** What someone does on the way to the seal; `ask` sends it. */
function useSealAct<Body, Done>(projectId: string, ask: (body: Body) => Promise<Done>) {
  return useMutation({
    mutationFn: ask,
    onSuccess: (_done, _given, _kept, { client }) => readAgain(client, { queryKey: projectKey(projectId) }),
  });
}

export const useCheckRevision = (projectId: string) =>
  useSealAct(projectId, (body: NewCheck) =>
    read(CheckNow, api.POST("/api/projects/{projectId}/checks", { ...at(projectId), body })),
  );

export const useDisposeMark = (projectId: string) =>
  useSealAct(projectId, (body: NewMarkDisposition) =>
    read(MarkDisposition, api.POST("/api/projects/{projectId}/dispositions", { ...at(projectId), body })),
  );

export const useConfirmValues = (projectId: string) =>
  useSealAct(projectId, (body: NewConfirmation) =>
    read(Confirmation, api.POST("/api/projects/{projectId}/confirmations", { ...at(projectId), body })),
  );

export const useIssueForSeal = (projectId: string) =>
  useSealAct(projectId, (body: IssueForSeal) =>
    read(SealIssueNow, api.POST("/api/projects/{projectId}/seal-issues", { ...at(projectId), body })),
  );

export const useKeepSealedCopy = (projectId: string, issueId: string) =>
  useSealAct(projectId, (body: NewSealedCopy) =>
    read(
      SealIssueNow,
      api.POST("/api/projects/{projectId}/seal-issues/{issueId}/copies", {
        params: { path: { projectId, issueId } },
        body,
      }),
    ),
  );
