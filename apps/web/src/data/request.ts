import { ChangeRequest, RequestAnswered, RequestPreview } from "@cornerway/schema";
import type { AnswerRequest, NewRequest } from "@cornerway/schema";
import { useMutation, useQuery } from "@tanstack/react-query";
import { http } from "./http.ts";
import { projectKey } from "./project.ts";

const path = (projectId: string) => `/api/projects/${projectId}/requests`;

export const makeRequest = (projectId: string, request: NewRequest) =>
  http(ChangeRequest, path(projectId), { method: "POST", body: request });

export const answerRequest = (projectId: string, requestId: string, answer: AnswerRequest) =>
  http(RequestAnswered, `${path(projectId)}/${requestId}/answer`, { method: "POST", body: answer });

export const previewKey = (projectId: string, requestId: string, draftNumber: number) =>
  [...projectKey(projectId), "preview", requestId, draftNumber] as const;

export const fetchPreview = (projectId: string, requestId: string) =>
  http(RequestPreview, `${path(projectId)}/${requestId}/preview`);

/** What taking a request in would do to the draft as it stands at `draftNumber`. */
export const useRequestPreview = (projectId: string, requestId: string, draftNumber: number) =>
  useQuery({
    queryKey: previewKey(projectId, requestId, draftNumber),
    queryFn: () => fetchPreview(projectId, requestId),
  });

export const useMakeRequest = (projectId: string) =>
  useMutation({
    mutationFn: (request: NewRequest) => makeRequest(projectId, request),
    onSuccess: (_made, _given, _kept, { client }) => client.invalidateQueries({ queryKey: projectKey(projectId) }),
  });

export const useAnswerRequest = (projectId: string) =>
  useMutation({
    mutationFn: ({ requestId, answer }: { requestId: string; answer: AnswerRequest }) =>
      answerRequest(projectId, requestId, answer),
    onSuccess: (_done, _given, _kept, { client }) => client.invalidateQueries({ queryKey: projectKey(projectId) }),
  });
