import { Project, ProjectSummary } from "@cornerway/schema";
import { useQuery } from "@tanstack/react-query";
import { z } from "zod";
import { api, read, readPages } from "./api/client.ts";

export const projectsKey = ["projects"] as const;
export const fetchProjects = () =>
  readPages(z.array(ProjectSummary), (after) => api.GET("/api/projects", { params: { query: { after } } }));
export const useProjects = () => useQuery({ queryKey: projectsKey, queryFn: fetchProjects });

export const projectKey = (id: string) => ["project", id] as const;
export const fetchProject = (id: string) =>
  read(Project, api.GET("/api/projects/{projectId}", { params: { path: { projectId: id } } }));
export const useProject = (id: string) => useQuery({ queryKey: projectKey(id), queryFn: () => fetchProject(id) });
