import { InvitationMade, KeptProject, ProjectPeople, ProjectStarted } from "@cornerway/schema";
import type { NewInvitation, Role, StartProject } from "@cornerway/schema";
import { useMutation, useQuery } from "@tanstack/react-query";
import { z } from "zod";
import { http } from "./http.ts";
import { projectKey, projectsKey } from "./project.ts";

/** The page has no live line of its own: it asks this often. */
const everyMs = 5_000;

export const peopleKey = (projectId: string) => ["people", projectId] as const;
const path = (projectId: string) => `/api/projects/${projectId}`;

export const usePeople = (projectId: string) =>
  useQuery({
    queryKey: peopleKey(projectId),
    queryFn: () => http(ProjectPeople, `${path(projectId)}/people`),
    refetchInterval: everyMs,
  });

export const useInvite = (projectId: string) =>
  useMutation({
    mutationFn: (body: NewInvitation) =>
      http(InvitationMade, `${path(projectId)}/invitations`, { method: "POST", body }),
    onSuccess: (_made, _given, _kept, { client }) => client.invalidateQueries({ queryKey: peopleKey(projectId) }),
  });

export type PeopleAct =
  | { act: "withdraw"; invitationId: string }
  | { act: "confirm"; personId: string }
  | { act: "remove"; personId: string; role: Role }
  | { act: "end"; personId: string; expiresAt: string };

/** Everything that is done to a person of a project, one after the other. */
export const usePeopleAct = (projectId: string) =>
  useMutation({
    mutationFn: (what: PeopleAct) => send(projectId, what),
    onSettled: (_done, _error, _given, _kept, { client }) =>
      Promise.all(
        [peopleKey(projectId), projectKey(projectId), projectsKey].map((queryKey) =>
          client.invalidateQueries({ queryKey }),
        ),
      ),
  });

function send(projectId: string, what: PeopleAct): Promise<unknown> {
  const at = path(projectId);
  const post = (rest: string, body: object) => http(z.unknown(), `${at}/people/${rest}`, { method: "POST", body });
  switch (what.act) {
    case "withdraw":
      return http(z.unknown(), `${at}/invitations/${what.invitationId}`, { method: "DELETE" });
    case "confirm":
      return post(`${what.personId}/confirm`, {});
    case "remove":
      return post(`${what.personId}/remove`, { role: what.role });
    case "end":
      return post(`${what.personId}/expiry`, { expiresAt: what.expiresAt });
  }
}

export const keptProjectsKey = ["kept-projects"] as const;

/** Every project of the service; asked for administrators only. */
export const useKeptProjects = (administrator: boolean) =>
  useQuery({
    queryKey: keptProjectsKey,
    queryFn: () => http(z.array(KeptProject), "/api/administration/projects"),
    enabled: administrator,
  });

export const useStartProject = () =>
  useMutation({
    mutationFn: (body: StartProject) => http(ProjectStarted, "/api/projects", { method: "POST", body }),
    onSuccess: (_done, _given, _kept, { client }) =>
      Promise.all([projectsKey, keptProjectsKey].map((queryKey) => client.invalidateQueries({ queryKey }))),
  });
