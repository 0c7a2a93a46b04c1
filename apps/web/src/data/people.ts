import { InvitationMade, KeptProject, ProjectPeople, ProjectStarted } from "@cornerway/schema";
import type { NewInvitation, Role, StartProject } from "@cornerway/schema";
import { useMutation, useQuery } from "@tanstack/react-query";
import { z } from "zod";
import { api, read } from "./api/client.ts";
import { projectKey, projectsKey } from "./project.ts";
import { readAgain } from "./read-again.ts";

/** The page has no live line of its own: it asks this often. */
const everyMs = 5_000;

export const peopleKey = (projectId: string) => ["people", projectId] as const;

export const usePeople = (projectId: string) =>
  useQuery({
    queryKey: peopleKey(projectId),
    queryFn: () =>
      read(ProjectPeople, api.GET("/api/projects/{projectId}/people", { params: { path: { projectId } } })),
    refetchInterval: everyMs,
  });

export const useInvite = (projectId: string) =>
  useMutation({
    mutationFn: (body: NewInvitation) =>
      read(
        InvitationMade,
        api.POST("/api/projects/{projectId}/invitations", { params: { path: { projectId } }, body }),
      ),
    onSuccess: (_made, _given, _kept, { client }) => readAgain(client, { queryKey: peopleKey(projectId) }),
  });

export type PeopleAct =
  | { act: "withdraw"; invitationId: string }
  | { act: "confirm"; personId: string }
  | { act: "remove"; personId: string; role: Role }
  | { act: "leave"; role: Role }
  | { act: "end"; personId: string; expiresAt: string };

/** Everything that is done to a person of a project, one after the other. */
export const usePeopleAct = (projectId: string) =>
  useMutation({
    mutationFn: (what: PeopleAct) => send(projectId, what),
    onSettled: (_done, _error, _given, _kept, { client }) =>
      Promise.all(
        [peopleKey(projectId), projectKey(projectId), projectsKey].map((queryKey) => readAgain(client, { queryKey })),
      ),
  });

function send(projectId: string, what: PeopleAct): Promise<unknown> {
  if (what.act === "withdraw") {
    const params = { path: { projectId, invitationId: what.invitationId } };
    return read(z.unknown(), api.DELETE("/api/projects/{projectId}/invitations/{invitationId}", { params }));
  }
  if (what.act === "leave") {
    const params = { path: { projectId } };
    return read(z.unknown(), api.POST("/api/projects/{projectId}/leave", { params, body: { role: what.role } }));
  }
  const params = { path: { projectId, personId: what.personId } };
  const person = "/api/projects/{projectId}/people/{personId}";
  switch (what.act) {
    case "confirm":
      return read(z.unknown(), api.POST(`${person}/confirm`, { params, body: {} }));
    case "remove":
      return read(z.unknown(), api.POST(`${person}/remove`, { params, body: { role: what.role } }));
    case "end":
      return read(z.unknown(), api.POST(`${person}/expiry`, { params, body: { expiresAt: what.expiresAt } }));
  }
}

export const keptProjectsKey = ["kept-projects"] as const;

/** Every project of the service; asked for administrators only. */
export const useKeptProjects = (administrator: boolean) =>
  useQuery({
    queryKey: keptProjectsKey,
    queryFn: () => read(z.array(KeptProject), api.GET("/api/administration/projects")),
    enabled: administrator,
  });

export const useStartProject = () =>
  useMutation({
    mutationFn: (body: StartProject) => read(ProjectStarted, api.POST("/api/projects", { body })),
    onSuccess: (_done, _given, _kept, { client }) =>
      Promise.all([projectsKey, keptProjectsKey].map((queryKey) => readAgain(client, { queryKey }))),
  });
