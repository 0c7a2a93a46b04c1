import { QuestionNow } from "@cornerway/schema";
import type { NewAnswer, NewQuestion, NewQuestionStep } from "@cornerway/schema";
import { useMutation, useQuery } from "@tanstack/react-query";
import { z } from "zod";
import { api, read } from "./api/client.ts";
import { projectKey } from "./project.ts";
import { readAgain } from "./read-again.ts";

const of = (projectId: string, questionId: string) => ({ params: { path: { projectId, questionId } } });

export const questionsKey = (projectId: string) => [...projectKey(projectId), "questions"] as const;
export const fetchQuestions = (projectId: string) =>
  read(z.array(QuestionNow), api.GET("/api/projects/{projectId}/questions", { params: { path: { projectId } } }));
export const useQuestions = (projectId: string) =>
  useQuery({ queryKey: questionsKey(projectId), queryFn: () => fetchQuestions(projectId) });

export const askQuestion = (projectId: string, body: NewQuestion) =>
  read(QuestionNow, api.POST("/api/projects/{projectId}/questions", { params: { path: { projectId } }, body }));

export const answerQuestion = (projectId: string, questionId: string, body: NewAnswer) =>
  read(
    QuestionNow,
    api.POST("/api/projects/{projectId}/questions/{questionId}/answer", { ...of(projectId, questionId), body }),
  );

export const followQuestion = (projectId: string, questionId: string, body: NewQuestionStep) =>
  read(
    QuestionNow,
    api.POST("/api/projects/{projectId}/questions/{questionId}/steps", { ...of(projectId, questionId), body }),
  );

export const useAskQuestion = (projectId: string) =>
  useMutation({
    mutationFn: (body: NewQuestion) => askQuestion(projectId, body),
    onSuccess: (_done, _given, _kept, { client }) => readAgain(client, { queryKey: projectKey(projectId) }),
  });

export const useAnswerQuestion = (projectId: string, questionId: string) =>
  useMutation({
    mutationFn: (body: NewAnswer) => answerQuestion(projectId, questionId, body),
    onSuccess: (_done, _given, _kept, { client }) => readAgain(client, { queryKey: projectKey(projectId) }),
  });

export const useFollowQuestion = (projectId: string, questionId: string) =>
  useMutation({
    mutationFn: (body: NewQuestionStep) => followQuestion(projectId, questionId, body),
    onSuccess: (_done, _given, _kept, { client }) => readAgain(client, { queryKey: projectKey(projectId) }),
  });
