import { Stamp } from "@cornerway/schema";
import type { NewStamp } from "@cornerway/schema";
import { useMutation } from "@tanstack/react-query";
import { http } from "./http.ts";
import { projectKey } from "./project.ts";

export const pressStamp = (projectId: string, stamp: NewStamp) =>
  http(Stamp, `/api/projects/${projectId}/stamps`, { method: "POST", body: stamp });

export const usePressStamp = (projectId: string) =>
  useMutation({
    mutationFn: (stamp: NewStamp) => pressStamp(projectId, stamp),
    onSuccess: (_done, _given, _kept, { client }) => client.invalidateQueries({ queryKey: projectKey(projectId) }),
  });
