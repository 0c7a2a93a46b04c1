import { Project, ProjectSummary } from "@cornerway/schema";
import { useQuery } from "@tanstack/react-query";
import { z } from "zod";
import { http } from "./http.ts";

export const projectsKey = ["projects"] as const;
export const fetchProjects = () => http(z.array(ProjectSummary), "/api/projects");
export const useProjects = () => useQuery({ queryKey: projectsKey, queryFn: fetchProjects });

export const projectKey = (id: string) => ["project", id] as const;
export const fetchProject = (id: string) => http(Project, `/api/projects/${id}`);
export const useProject = (id: string) => useQuery({ queryKey: projectKey(id), queryFn: () => fetchProject(id) });
