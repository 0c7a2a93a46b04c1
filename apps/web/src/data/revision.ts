import { Revision, RevisionSummary } from "@cornerway/schema";
import type { NewRevision } from "@cornerway/schema";
import { useMutation, useQuery } from "@tanstack/react-query";
import { z } from "zod";
import { http } from "./http.ts";
import { projectKey } from "./project.ts";

const path = (projectId: string) => `/api/projects/${projectId}/revisions`;

export const revisionsKey = (projectId: string) => [...projectKey(projectId), "revisions"] as const;
export const fetchRevisions = (projectId: string) => http(z.array(RevisionSummary), path(projectId));
export const useRevisions = (projectId: string) =>
  useQuery({ queryKey: revisionsKey(projectId), queryFn: () => fetchRevisions(projectId) });

export const revisionKey = (projectId: string, letter: string) => [...revisionsKey(projectId), letter] as const;
export const fetchRevision = (projectId: string, letter: string) => http(Revision, `${path(projectId)}/${letter}`);

/** One revision with its scheme and the service's own assessment; nothing is asked while there is no letter. */
export const useRevision = (projectId: string, letter: string | null) =>
  useQuery({
    queryKey: revisionKey(projectId, letter ?? ""),
    queryFn: () => fetchRevision(projectId, letter ?? ""),
    enabled: letter !== null,
  });

export const sendRevision = (projectId: string, revision: NewRevision) =>
  http(RevisionSummary, path(projectId), { method: "POST", body: revision });

export const useSendRevision = (projectId: string) =>
  useMutation({
    mutationFn: (revision: NewRevision) => sendRevision(projectId, revision),
    onSuccess: (_sent, _given, _kept, { client }) => client.invalidateQueries({ queryKey: projectKey(projectId) }),
  });
