import { Note } from "@cornerway/schema";
import type { NewNote } from "@cornerway/schema";
import { useMutation } from "@tanstack/react-query";
import { api, read } from "./api/client.ts";
import { threadKey } from "./thread.ts";
import { readAgain } from "./read-again.ts";

export const writeNote = (projectId: string, note: NewNote) =>
  read(Note, api.POST("/api/projects/{projectId}/notes", { params: { path: { projectId } }, body: note }));

export const settleNote = (projectId: string, noteId: string) =>
  read(
    Note,
    api.POST("/api/projects/{projectId}/notes/{noteId}/settle", { params: { path: { projectId, noteId } }, body: {} }),
  );

export const useWriteNote = (projectId: string) =>
  useMutation({
    mutationFn: (note: NewNote) => writeNote(projectId, note),
    onSuccess: (_note, _given, _kept, { client }) => readAgain(client, { queryKey: threadKey(projectId) }),
  });

export const useSettleNote = (projectId: string) =>
  useMutation({
    mutationFn: (noteId: string) => settleNote(projectId, noteId),
    onSuccess: (_note, _given, _kept, { client }) => readAgain(client, { queryKey: threadKey(projectId) }),
  });
