import { LinkUsed, OpenedLink } from "@cornerway/schema";
import type { ResetAsked, UseLink } from "@cornerway/schema";
import { useMutation, useQuery } from "@tanstack/react-query";
import { useEffect } from "react";
import { z } from "zod";
import { http, isProblem } from "./http.ts";
import { linkSecret } from "./link-secret.ts";
import { keepSession } from "./session.ts";

export const linkKey = ["link"] as const;

/** What the link is for: its secret is exchanged for a cookie once, and the cookie is asked from then on. */
export async function fetchLink(): Promise<OpenedLink> {
  const secret = linkSecret.get();
  if (secret === null) return http(OpenedLink, "/api/link");
  try {
    const link = await http(OpenedLink, "/api/link", { method: "POST", body: { secret } });
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
  const used = await http(LinkUsed, "/api/link/use", { method: "POST", body: words });
  return { ...used, session: keepSession(used.session) };
}

export const useLinkUse = () => useMutation({ mutationFn: sendLink });

export const askNewPassword = (words: ResetAsked) =>
  http(z.unknown(), "/api/new-password", { method: "POST", body: words });
