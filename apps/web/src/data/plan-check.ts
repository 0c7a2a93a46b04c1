import { PlanCheckComment, PlanCheckRegister, type BringInComments, type NewCommentStep } from "@cornerway/schema";
import { useMutation, useQuery, type QueryClient } from "@tanstack/react-query";
import { api, read } from "./api/client.ts";
import { projectKey } from "./project.ts";
import { readAgain } from "./read-again.ts";

const registerKey = (projectId: string) => [...projectKey(projectId), "plan-check"] as const;
const at = (projectId: string) => ({ params: { path: { projectId } } });
const again = (client: QueryClient, projectId: string) => readAgain(client, { queryKey: registerKey(projectId) });

/** The comments of the authority with their replies. */
export const useRegister = (projectId: string) =>
  useQuery({
    queryKey: registerKey(projectId),
    queryFn: () => read(PlanCheckRegister, api.GET("/api/projects/{projectId}/plan-check", at(projectId))),
  });

export const useBringInComments = (projectId: string) =>
  useMutation({
    mutationFn: (body: BringInComments) =>
      read(PlanCheckRegister, api.POST("/api/projects/{projectId}/plan-check", { ...at(projectId), body })),
    onSettled: (_register, _error, _given, _kept, { client }) => again(client, projectId),
  });

export const useCommentStep = (projectId: string, commentId: string) =>
  useMutation({
    mutationFn: (body: NewCommentStep) =>
      read(
        PlanCheckComment,
        api.POST("/api/projects/{projectId}/plan-check/{commentId}/steps", {
          params: { path: { projectId, commentId } },
          body,
        }),
      ),
    onSettled: (_comment, _error, _given, _kept, { client }) => again(client, projectId),
  });

export const registerFile = (projectId: string): string => `/api/projects/${projectId}/plan-check/file`;
