import { Note } from "@cornerway/schema";
import type { NewNote } from "@cornerway/schema";
import { useMutation } from "@tanstack/react-query";
import { http } from "./http.ts";
import { threadKey } from "./thread.ts";

const path = (projectId: string) => `/api/projects/${projectId}/notes`;

export const writeNote = (projectId: string, note: NewNote) =>
  http(Note, path(projectId), { method: "POST", body: note });

export const settleNote = (projectId: string, noteId: string) =>
  http(Note, `${path(projectId)}/${noteId}/settle`, { method: "POST" });

export const useWriteNote = (projectId: string) =>
  useMutation({
    mutationFn: (note: NewNote) => writeNote(projectId, note),
    onSuccess: (_note, _given, _kept, { client }) => client.invalidateQueries({ queryKey: threadKey(projectId) }),
  });

export const useSettleNote = (projectId: string) =>
  useMutation({
    mutationFn: (noteId: string) => settleNote(projectId, noteId),
    onSuccess: (_note, _given, _kept, { client }) => client.invalidateQueries({ queryKey: threadKey(projectId) }),
  });
