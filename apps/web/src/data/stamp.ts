import { Stamp, StampNow } from "@cornerway/schema";
import type { PressStamp } from "@cornerway/schema";
import { useMutation, useQuery } from "@tanstack/react-query";
import { z } from "zod";
import { api, read } from "./api/client.ts";
import { projectKey } from "./project.ts";
import { readAgain } from "./read-again.ts";

export const stampsKey = (projectId: string) => [...projectKey(projectId), "stamps"] as const;
export const fetchStamps = (projectId: string) =>
  read(z.array(StampNow), api.GET("/api/projects/{projectId}/stamps", { params: { path: { projectId } } }));
export const useStamps = (projectId: string) =>
  useQuery({ queryKey: stampsKey(projectId), queryFn: () => fetchStamps(projectId) });

export const pressStamp = (projectId: string, body: PressStamp) =>
  read(Stamp, api.POST("/api/projects/{projectId}/stamps", { params: { path: { projectId } }, body }));

export const usePressStamp = (projectId: string) =>
  useMutation({
    mutationFn: (body: PressStamp) => pressStamp(projectId, body),
    onSuccess: (_done, _given, _kept, { client }) => readAgain(client, { queryKey: projectKey(projectId) }),
  });
