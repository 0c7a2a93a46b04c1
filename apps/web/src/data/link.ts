import { LinkUsed, OpenedLink } from "@cornerway/schema";
import type { ResetAsked, UseLink } from "@cornerway/schema";
import { useMutation, useQuery } from "@tanstack/react-query";
import { useEffect } from "react";
import { z } from "zod";
import { api, read } from "./api/client.ts";
import { isProblem } from "./http.ts";
import { linkSecret } from "./link-secret.ts";
import { keepSession } from "./session.ts";

export const linkKey = ["link"] as const;

/** What the link is for: its secret is exchanged for a cookie once, and the cookie is asked from then on. */
export async function fetchLink(): Promise<OpenedLink> {
  const secret = linkSecret.get();
  if (secret === null) return read(OpenedLink, api.GET("/api/link"));
  try {
    const link = await read(OpenedLink, api.POST("/api/link", { body: { secret } }));
    linkSecret.forget();
    return link;
  } catch (error) {
    if (isProblem(error, "link-gone")) linkSecret.forget();
    throw error;
  }
}

/** The link this page was opened with, read anew when another one is put into its address. */
export function useOpenedLink() {
  const link = useQuery({ queryKey: linkKey, queryFn: fetchLink, staleTime: Infinity, gcTime: 0 });
  const { refetch } = link;
  useEffect(() => linkSecret.subscribe(() => void refetch()), [refetch]);
  return link;
}

async function sendLink(words: UseLink): Promise<LinkUsed> {
  const used = await read(LinkUsed, api.POST("/api/link/use", { body: words }));
  return { ...used, session: keepSession(used.session) };
}

export const useLinkUse = () => useMutation({ mutationFn: sendLink });

export const askNewPassword = (words: ResetAsked) => read(z.unknown(), api.POST("/api/new-password", { body: words }));
