import { PremiumDifference, RequestPremium, RevisionPremium, may } from "@cornerway/schema";
import type { Project } from "@cornerway/schema";
import { useQuery } from "@tanstack/react-query";
import { api, read } from "./api/client.ts";
import { projectKey } from "./project.ts";

type Of = Pick<Project, "id" | "roles">;
const premiumKey = (projectId: string) => [...projectKey(projectId), "premium"] as const;
const seesPrices = ({ roles }: Of) => may(roles, "read-prices");

/** What a revision costs above the plain stack. */
export const useRevisionPremium = (project: Of, letter: string | null) =>
  useQuery({
    queryKey: [...premiumKey(project.id), letter],
    queryFn: () =>
      read(
        RevisionPremium,
        api.GET("/api/projects/{projectId}/revisions/{letter}/premium", {
          params: { path: { projectId: project.id, letter: letter ?? "" } },
        }),
      ),
    enabled: letter !== null && seesPrices(project),
  });

/** What makes up the difference since an earlier revision; nothing is asked while there is none. */
export const usePremiumSince = (project: Of, letter: string, earlier: string | null) =>
  useQuery({
    queryKey: [...premiumKey(project.id), letter, "since", earlier],
    queryFn: () =>
      read(
        PremiumDifference,
        api.GET("/api/projects/{projectId}/revisions/{letter}/premium/since/{earlier}", {
          params: { path: { projectId: project.id, letter, earlier: earlier ?? "" } },
        }),
      ),
    enabled: earlier !== null && seesPrices(project),
  });

/** What a change request adds to its revision. */
export const useRequestPremium = (project: Of, requestId: string) =>
  useQuery({
    queryKey: [...premiumKey(project.id), "request", requestId],
    queryFn: () =>
      read(
        RequestPremium,
        api.GET("/api/projects/{projectId}/requests/{requestId}/premium", {
          params: { path: { projectId: project.id, requestId } },
        }),
      ),
    enabled: seesPrices(project),
  });

/** Where a revision's premium lies as a table, in the units of the reader. */
export const premiumFilePath = (projectId: string, letter: string, units: string, earlier?: string): string => {
  const since = earlier === undefined ? "" : `/since/${earlier}`;
  return `/api/projects/${projectId}/revisions/${letter}/premium${since}/file?units=${units}`;
};
