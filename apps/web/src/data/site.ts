import { SiteNow, SiteWord } from "@cornerway/schema";
import type { NewSiteJudgement, NewSiteWord } from "@cornerway/schema";
import { useMutation, useQuery } from "@tanstack/react-query";
import { api, read } from "./api/client.ts";
import { projectKey } from "./project.ts";
import { readAgain } from "./read-again.ts";

const at = (projectId: string) => ({ params: { path: { projectId } } });

export const siteKey = (projectId: string) => [...projectKey(projectId), "site"] as const;
export const fetchSite = (projectId: string) => read(SiteNow, api.GET("/api/projects/{projectId}/site", at(projectId)));
export const useSite = (projectId: string) =>
  useQuery({ queryKey: siteKey(projectId), queryFn: () => fetchSite(projectId) });

/** What someone says on site: whoever looks at an item, or the engineer who judges what was said of it. */
export type SiteSaying = { seen: NewSiteWord } | { judged: NewSiteJudgement };

export const saySiteWord = (projectId: string, saying: SiteSaying) =>
  read(
    SiteWord,
    "seen" in saying
      ? api.POST("/api/projects/{projectId}/site/words", { ...at(projectId), body: saying.seen })
      : api.POST("/api/projects/{projectId}/site/judgements", { ...at(projectId), body: saying.judged }),
  );

export const useSaySiteWord = (projectId: string) =>
  useMutation({
    mutationFn: (saying: SiteSaying) => saySiteWord(projectId, saying),
    onSuccess: (_done, _given, _kept, { client }) => readAgain(client, { queryKey: projectKey(projectId) }),
  });
