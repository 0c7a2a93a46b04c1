import { Stamp } from "@cornerway/schema";
import type { NewStamp } from "@cornerway/schema";
import { useMutation } from "@tanstack/react-query";
import { api, read } from "./api/client.ts";
import { projectKey } from "./project.ts";
import { readAgain } from "./read-again.ts";

export const pressStamp = (projectId: string, stamp: NewStamp) =>
  read(Stamp, api.POST("/api/projects/{projectId}/stamps", { params: { path: { projectId } }, body: stamp }));

export const usePressStamp = (projectId: string) =>
  useMutation({
    mutationFn: (stamp: NewStamp) => pressStamp(projectId, stamp),
    onSuccess: (_done, _given, _kept, { client }) => readAgain(client, { queryKey: projectKey(projectId) }),
  });
