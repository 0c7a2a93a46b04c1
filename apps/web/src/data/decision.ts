import { Decision, DecisionShown, may } from "@cornerway/schema";
import type { NewDecision, Project } from "@cornerway/schema";
import { useMutation, useQuery } from "@tanstack/react-query";
import { z } from "zod";
import { api, read } from "./api/client.ts";
import { projectKey } from "./project.ts";
import { readAgain } from "./read-again.ts";

/** The owner's decisions, oldest first. */
export const useDecisions = ({ id, roles }: Pick<Project, "id" | "roles">) =>
  useQuery({
    queryKey: [...projectKey(id), "decisions"],
    queryFn: () =>
      read(
        z.array(DecisionShown),
        api.GET("/api/projects/{projectId}/decisions", { params: { path: { projectId: id } } }),
      ),
    enabled: may(roles, "read-prices"),
  });

export const useDecide = (projectId: string) =>
  useMutation({
    mutationFn: (decision: NewDecision) =>
      read(
        Decision,
        api.POST("/api/projects/{projectId}/decisions", { params: { path: { projectId } }, body: decision }),
      ),
    onSettled: (_done, _error, _given, _kept, { client }) => readAgain(client, { queryKey: projectKey(projectId) }),
  });

/** The last word on a revision, or on a request made on it, with what has changed since; undefined while there is none. */
export const lastWord = (
  decisions: readonly DecisionShown[] | undefined,
  { revision, requestId }: { revision: string; requestId: string | null },
): DecisionShown | undefined =>
  decisions?.find(
    ({ decision, latest }) => latest && decision.revision === revision && decision.requestId === requestId,
  );
