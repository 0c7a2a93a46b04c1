import { AssessmentRun, RecordedRun } from "@cornerway/schema";
import { useMutation, useQuery, type QueryClient } from "@tanstack/react-query";
import { z } from "zod";
import { api, read } from "./api/client.ts";
import { revisionKey } from "./revision.ts";

const runKey = (projectId: string, letter: string) => [...revisionKey(projectId, letter), "assessment"] as const;

const place = (projectId: string, letter: string) => ({ params: { path: { projectId, letter } } });

/** How the assessment of a revision stands; told further by the live line. */
export const useAssessmentRun = (projectId: string, letter: string) =>
  useQuery({
    queryKey: runKey(projectId, letter),
    queryFn: () =>
      read(AssessmentRun, api.GET("/api/projects/{projectId}/revisions/{letter}/assessment", place(projectId, letter))),
  });

/** Every recorded run on a revision, each against the one before it; asked anew once another is done. */
export const useRuns = (projectId: string, letter: string) =>
  useQuery({
    queryKey: [...revisionKey(projectId, letter), "runs"] as const,
    queryFn: () =>
      read(
        z.array(RecordedRun),
        api.GET("/api/projects/{projectId}/revisions/{letter}/assessment/runs", place(projectId, letter)),
      ),
  });

/** What the live line says of a run takes the place of what was asked for. */
export const takeRun = (client: QueryClient, projectId: string, run: AssessmentRun): void =>
  void client.setQueryData(runKey(projectId, run.letter), run);

export const useAssessAgain = (projectId: string, letter: string) =>
  useMutation({
    mutationFn: () =>
      read(
        AssessmentRun,
        api.POST("/api/projects/{projectId}/revisions/{letter}/assessment/again", {
          ...place(projectId, letter),
          body: {},
        }),
      ),
    onSuccess: (run, _given, _kept, { client }) => takeRun(client, projectId, run),
  });

export const useStopAssessment = (projectId: string, letter: string) =>
  useMutation({
    mutationFn: () =>
      read(
        AssessmentRun,
        api.POST("/api/projects/{projectId}/revisions/{letter}/assessment/stop", {
          ...place(projectId, letter),
          body: {},
        }),
      ),
    onSuccess: (run, _given, _kept, { client }) => takeRun(client, projectId, run),
  });
