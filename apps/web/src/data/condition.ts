import { ConditionNow } from "@cornerway/schema";
import type { JudgeCondition, MeetCondition } from "@cornerway/schema";
import { useMutation, useQuery } from "@tanstack/react-query";
import { z } from "zod";
import { api, read } from "./api/client.ts";
import { projectKey } from "./project.ts";
import { readAgain } from "./read-again.ts";

const of = (projectId: string, conditionId: string) => ({ params: { path: { projectId, conditionId } } });

export const conditionsKey = (projectId: string) => [...projectKey(projectId), "conditions"] as const;
export const fetchConditions = (projectId: string) =>
  read(z.array(ConditionNow), api.GET("/api/projects/{projectId}/conditions", { params: { path: { projectId } } }));
export const useConditions = (projectId: string) =>
  useQuery({ queryKey: conditionsKey(projectId), queryFn: () => fetchConditions(projectId) });

/** What someone does about a condition: says how it is met, or judges that. */
export type ConditionAct = { met: MeetCondition } | { judged: JudgeCondition };

export const followCondition = (projectId: string, conditionId: string, act: ConditionAct) =>
  read(
    ConditionNow,
    "met" in act
      ? api.POST("/api/projects/{projectId}/conditions/{conditionId}/met", {
          ...of(projectId, conditionId),
          body: act.met,
        })
      : api.POST("/api/projects/{projectId}/conditions/{conditionId}/steps", {
          ...of(projectId, conditionId),
          body: act.judged,
        }),
  );

export const useFollowCondition = (projectId: string, conditionId: string) =>
  useMutation({
    mutationFn: (act: ConditionAct) => followCondition(projectId, conditionId, act),
    onSuccess: (_done, _given, _kept, { client }) => readAgain(client, { queryKey: projectKey(projectId) }),
  });
