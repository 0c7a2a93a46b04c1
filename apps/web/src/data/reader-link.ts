import { ReaderLinkMade, type NewReaderLink } from "@cornerway/schema";
import { useMutation } from "@tanstack/react-query";
import { z } from "zod";
import { api, read } from "./api/client.ts";
import { peopleKey } from "./people.ts";
import { readAgain } from "./read-again.ts";

export const useMakeReaderLink = (projectId: string) =>
  useMutation({
    mutationFn: (body: NewReaderLink) =>
      read(
        ReaderLinkMade,
        api.POST("/api/projects/{projectId}/reader-links", { params: { path: { projectId } }, body }),
      ),
    onSuccess: (_made, _given, _kept, { client }) => readAgain(client, { queryKey: peopleKey(projectId) }),
  });

/** Withdraws the link of a reader. */
export const useReaderLinkAct = (projectId: string) =>
  useMutation({
    mutationFn: (readerId: string) =>
      read(
        z.unknown(),
        api.DELETE("/api/projects/{projectId}/reader-links/{readerId}", { params: { path: { projectId, readerId } } }),
      ),
    onSettled: (_done, _error, _given, _kept, { client }) => readAgain(client, { queryKey: peopleKey(projectId) }),
  });
