import { ChangeRequest } from "@cornerway/schema";
import type { AnswerRequest, NewRequest } from "@cornerway/schema";
import { useMutation } from "@tanstack/react-query";
import { http } from "./http.ts";
import { projectKey } from "./project.ts";

const path = (projectId: string) => `/api/projects/${projectId}/requests`;

export const makeRequest = (projectId: string, request: NewRequest) =>
  http(ChangeRequest, path(projectId), { method: "POST", body: request });

export const answerRequest = (projectId: string, requestId: string, answer: AnswerRequest) =>
  http(ChangeRequest, `${path(projectId)}/${requestId}/answer`, { method: "POST", body: answer });

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
