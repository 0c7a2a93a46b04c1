import { SurveyNow, SurveyedContainerNow, ProjectSurveyLimits } from "@cornerway/schema";
import type {
  NewInspection,
  NewJudgement,
  NewPosition,
  NewSurveyedContainer,
  NewSurveyLimits,
} from "@cornerway/schema";
import { useMutation, useQuery } from "@tanstack/react-query";
import { api, read } from "./api/client.ts";
import { projectKey } from "./project.ts";
import { readAgain } from "./read-again.ts";

const at = (projectId: string) => ({ params: { path: { projectId } } });

export const surveyKey = (projectId: string) => [...projectKey(projectId), "survey"] as const;
export const fetchSurvey = (projectId: string) =>
  read(SurveyNow, api.GET("/api/projects/{projectId}/survey", at(projectId)));
export const useSurvey = (projectId: string) =>
  useQuery({ queryKey: surveyKey(projectId), queryFn: () => fetchSurvey(projectId) });

/** What someone does in the survey; `ask` sends it. A placed container draws as well, so all of the project is read again. */
function useSurveyAct<Body, Done>(projectId: string, ask: (body: Body) => Promise<Done>) {
  return useMutation({
    mutationFn: ask,
    onSuccess: (_done, _given, _kept, { client }) => readAgain(client, { queryKey: projectKey(projectId) }),
  });
}

export const useOfferContainer = (projectId: string) =>
  useSurveyAct(projectId, (body: NewSurveyedContainer) =>
    read(SurveyedContainerNow, api.POST("/api/projects/{projectId}/survey", { ...at(projectId), body })),
  );

export const useSetSurveyLimits = (projectId: string) =>
  useSurveyAct(projectId, (body: NewSurveyLimits) =>
    read(ProjectSurveyLimits, api.POST("/api/projects/{projectId}/survey/limits", { ...at(projectId), body })),
  );

const of = (projectId: string, containerId: string) => ({ params: { path: { projectId, containerId } } });

export const useInspectContainer = (projectId: string, containerId: string) =>
  useSurveyAct(projectId, (body: NewInspection) =>
    read(
      SurveyedContainerNow,
      api.POST("/api/projects/{projectId}/survey/{containerId}/inspections", { ...of(projectId, containerId), body }),
    ),
  );

export const useJudgeContainer = (projectId: string, containerId: string) =>
  useSurveyAct(projectId, (body: NewJudgement) =>
    read(
      SurveyedContainerNow,
      api.POST("/api/projects/{projectId}/survey/{containerId}/judgements", { ...of(projectId, containerId), body }),
    ),
  );

export const usePlaceContainer = (projectId: string, containerId: string) =>
  useSurveyAct(projectId, (body: NewPosition) =>
    read(
      SurveyedContainerNow,
      api.POST("/api/projects/{projectId}/survey/{containerId}/positions", { ...of(projectId, containerId), body }),
    ),
  );
