import { Revision, RevisionSummary } from "@cornerway/schema";
import type { NewRevision } from "@cornerway/schema";
import { useMutation, useQuery } from "@tanstack/react-query";
import { z } from "zod";
import { api, read, readPages } from "./api/client.ts";
import { projectKey } from "./project.ts";
import { readAgain } from "./read-again.ts";

export const revisionsKey = (projectId: string) => [...projectKey(projectId), "revisions"] as const;
export const fetchRevisions = (projectId: string) =>
  readPages(z.array(RevisionSummary), (after) =>
    api.GET("/api/projects/{projectId}/revisions", { params: { path: { projectId }, query: { after } } }),
  );
export const useRevisions = (projectId: string) =>
  useQuery({ queryKey: revisionsKey(projectId), queryFn: () => fetchRevisions(projectId) });

export const revisionKey = (projectId: string, letter: string) => [...revisionsKey(projectId), letter] as const;
export const fetchRevision = (projectId: string, letter: string) =>
  read(Revision, api.GET("/api/projects/{projectId}/revisions/{letter}", { params: { path: { projectId, letter } } }));

/** One revision with its scheme and the service's own assessment; nothing is asked while there is no letter. */
export const useRevision = (projectId: string, letter: string | null) =>
  useQuery({
    queryKey: revisionKey(projectId, letter ?? ""),
    queryFn: () => fetchRevision(projectId, letter ?? ""),
    enabled: letter !== null,
  });

export const sendRevision = (projectId: string, revision: NewRevision) =>
  read(
    RevisionSummary,
    api.POST("/api/projects/{projectId}/revisions", { params: { path: { projectId } }, body: revision }),
  );

export const useSendRevision = (projectId: string) =>
  useMutation({
    mutationFn: (revision: NewRevision) => sendRevision(projectId, revision),
    onSuccess: (_sent, _given, _kept, { client }) => readAgain(client, { queryKey: projectKey(projectId) }),
  });
