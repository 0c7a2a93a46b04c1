import {
  KeptOption,
  may,
  OptionDrawn,
  OptionPick,
  OptionSetNow,
  OptionSetOpened,
  OptionWithdrawal,
} from "@cornerway/schema";
import type { NewOption, NewOptionSet, NewPick, NewWithdrawal, Project } from "@cornerway/schema";
import { useMutation, useQueries, useQuery } from "@tanstack/react-query";
import { z } from "zod";
import { api, read } from "./api/client.ts";
import { projectKey } from "./project.ts";
import { readAgain } from "./read-again.ts";

const optionSetsKey = (projectId: string) => [...projectKey(projectId), "option sets"] as const;
const at = (projectId: string) => ({ params: { path: { projectId } } });

/** Alternatives side by side, set by set. */
export const useOptionSets = ({ id, roles }: Pick<Project, "id" | "roles">) =>
  useQuery({
    queryKey: optionSetsKey(id),
    queryFn: () => read(z.array(OptionSetNow), api.GET("/api/projects/{projectId}/option-sets", at(id))),
    enabled: may(roles, "read-prices"),
  });

/** The drawings of a set, which never change once they are kept; undefined while one is not here yet. */
export const useOptionsDrawn = (projectId: string, setId: string, optionIds: readonly string[]) =>
  useQueries({
    queries: optionIds.map((optionId) => ({
      queryKey: [...optionSetsKey(projectId), "drawn", optionId],
      queryFn: () =>
        read(
          OptionDrawn,
          api.GET("/api/projects/{projectId}/option-sets/{setId}/options/{optionId}", {
            params: { path: { projectId, setId, optionId } },
          }),
        ),
      staleTime: Infinity,
    })),
    combine: (drawn) => new Map(drawn.flatMap(({ data }) => (data === undefined ? [] : [[data.id, data.scheme]]))),
  });

/** What someone does about alternatives; `ask` sends it. */
function useOptionAct<Body, Done>(projectId: string, ask: (body: Body) => Promise<Done>) {
  return useMutation({
    mutationFn: ask,
    onSuccess: (_done, _given, _kept, { client }) => readAgain(client, { queryKey: projectKey(projectId) }),
  });
}

const ofSet = (projectId: string, setId: string) => ({ params: { path: { projectId, setId } } });

export const useOpenOptionSet = (projectId: string) =>
  useOptionAct(projectId, (body: NewOptionSet) =>
    read(OptionSetOpened, api.POST("/api/projects/{projectId}/option-sets", { ...at(projectId), body })),
  );

export const useKeepOption = (projectId: string, setId: string) =>
  useOptionAct(projectId, (body: NewOption) =>
    read(
      KeptOption,
      api.POST("/api/projects/{projectId}/option-sets/{setId}/options", { ...ofSet(projectId, setId), body }),
    ),
  );

export const usePickOption = (projectId: string, setId: string) =>
  useOptionAct(projectId, (body: NewPick) =>
    read(
      OptionPick,
      api.POST("/api/projects/{projectId}/option-sets/{setId}/picks", { ...ofSet(projectId, setId), body }),
    ),
  );

export const useWithdrawOption = (projectId: string, setId: string, optionId: string) =>
  useOptionAct(projectId, (body: NewWithdrawal) =>
    read(
      OptionWithdrawal,
      api.POST("/api/projects/{projectId}/option-sets/{setId}/options/{optionId}/withdrawal", {
        params: { path: { projectId, setId, optionId } },
        body,
      }),
    ),
  );
