import { ProjectCostBook, may } from "@cornerway/schema";
import type { CostBook, Project } from "@cornerway/schema";
import { useMutation, useQuery } from "@tanstack/react-query";
import { api, read } from "./api/client.ts";
import { projectKey } from "./project.ts";
import { readAgain } from "./read-again.ts";

export const costBookKey = (projectId: string) => [...projectKey(projectId), "cost-book"] as const;
export const fetchCostBook = (projectId: string) =>
  read(ProjectCostBook, api.GET("/api/projects/{projectId}/cost-book", { params: { path: { projectId } } }));

/** What the project pays; nothing is asked for those who see no prices. */
export const useCostBook = ({ id, roles }: Pick<Project, "id" | "roles">) =>
  useQuery({ queryKey: costBookKey(id), queryFn: () => fetchCostBook(id), enabled: may(roles, "read-prices") });

/** Changes the book that has this digest; refused when it is another by now. */
export const useChangeCostBook = (projectId: string) =>
  useMutation({
    mutationFn: ({ book, digest }: { book: CostBook; digest: string }) => {
      const params = { path: { projectId }, header: { "if-match": `"${digest}"` } };
      return read(ProjectCostBook, api.POST("/api/projects/{projectId}/cost-book", { params, body: book }));
    },
    onSuccess: (_changed, _given, _kept, { client }) => readAgain(client, { queryKey: projectKey(projectId) }),
  });
