import { Notices, NoticeSetting } from "@cornerway/schema";
import { useMutation, useQuery } from "@tanstack/react-query";
import { z } from "zod";
import { api, read } from "./api/client.ts";
import { projectsKey } from "./project.ts";
import { readAgain } from "./read-again.ts";

/** Read again with the projects: every entry of a record may concern whoever reads. */
export const noticesKey = [...projectsKey, "notices"] as const;
export const noticeSettingKey = ["notice-setting"] as const;

/** Not asked for by those who read by a link: they have no account to be told in. */
export const useNotices = (asked = true) =>
  useQuery({ queryKey: noticesKey, queryFn: () => read(Notices, api.GET("/api/notices")), enabled: asked });

/** Says that everything of some projects is seen, each up to an entry. */
export const useSeeNotices = () =>
  useMutation({
    mutationFn: (upTo: ReadonlyMap<string, number>) =>
      Promise.all(
        [...upTo].map(([projectId, number]) =>
          read(
            z.unknown(),
            api.POST("/api/projects/{projectId}/notices/seen", {
              params: { path: { projectId } },
              body: { upTo: number },
            }),
          ),
        ),
      ),
    onSettled: (_done, _error, _given, _kept, { client }) => readAgain(client, { queryKey: noticesKey }),
  });

export const useNoticeSetting = () =>
  useQuery({ queryKey: noticeSettingKey, queryFn: () => read(NoticeSetting, api.GET("/api/account/notices")) });

export const useSetNotices = () =>
  useMutation({
    mutationFn: (body: NoticeSetting) => read(z.unknown(), api.POST("/api/account/notices", { body })),
    onSettled: (_done, _error, _given, _kept, { client }) => readAgain(client, { queryKey: noticeSettingKey }),
  });
