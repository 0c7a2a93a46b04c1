import { ChangeRequest, RequestAnswered, RequestPreview } from "@cornerway/schema";
import type { AnswerRequest, NewRequest } from "@cornerway/schema";
import { useMutation, useQuery } from "@tanstack/react-query";
import { api, read } from "./api/client.ts";
import { projectKey } from "./project.ts";
import { readAgain } from "./read-again.ts";

export const makeRequest = (projectId: string, request: NewRequest) =>
  read(
    ChangeRequest,
    api.POST("/api/projects/{projectId}/requests", { params: { path: { projectId } }, body: request }),
  );

export const answerRequest = (projectId: string, requestId: string, answer: AnswerRequest) =>
  read(
    RequestAnswered,
    api.POST("/api/projects/{projectId}/requests/{requestId}/answer", {
      params: { path: { projectId, requestId } },
      body: answer,
    }),
  );

export const previewKey = (projectId: string, requestId: string, draftNumber: number) =>
  [...projectKey(projectId), "preview", requestId, draftNumber] as const;

export const fetchPreview = (projectId: string, requestId: string) =>
  read(
    RequestPreview,
    api.GET("/api/projects/{projectId}/requests/{requestId}/preview", { params: { path: { projectId, requestId } } }),
  );

/** What taking a request in would do to the draft as it stands at `draftNumber`. */
export const useRequestPreview = (projectId: string, requestId: string, draftNumber: number) =>
  useQuery({
    queryKey: previewKey(projectId, requestId, draftNumber),
    queryFn: () => fetchPreview(projectId, requestId),
  });

export const useMakeRequest = (projectId: string) =>
  useMutation({
    mutationFn: (request: NewRequest) => makeRequest(projectId, request),
    onSuccess: (_made, _given, _kept, { client }) => readAgain(client, { queryKey: projectKey(projectId) }),
  });

export const useAnswerRequest = (projectId: string) =>
  useMutation({
    mutationFn: ({ requestId, answer }: { requestId: string; answer: AnswerRequest }) =>
      answerRequest(projectId, requestId, answer),
    onSuccess: (_done, _given, _kept, { client }) => readAgain(client, { queryKey: projectKey(projectId) }),
  });
