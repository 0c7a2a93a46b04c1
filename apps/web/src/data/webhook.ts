import { Webhook, WebhookDelivery, WebhookMade } from "@cornerway/schema";
import { useMutation, useQuery } from "@tanstack/react-query";
import type { QueryClient } from "@tanstack/react-query";
import { z } from "zod";
import { newUuid } from "../tools/new-uuid.ts";
import { api, read } from "./api/client.ts";
import { readAgain } from "./read-again.ts";

export const webhooksKey = (projectId: string) => ["webhooks", projectId] as const;
const refresh = (client: QueryClient, projectId: string) => readAgain(client, { queryKey: webhooksKey(projectId) });

export const useWebhooks = (projectId: string) =>
  useQuery({
    queryKey: webhooksKey(projectId),
    queryFn: () =>
      read(z.array(Webhook), api.GET("/api/projects/{projectId}/webhooks", { params: { path: { projectId } } })),
  });

/** Telling happens elsewhere and writes nothing in the record that would call for reading again. */
const TOLD_AGAIN_MS = 5000;

/** The last few words a webhook was told, read again while they are looked at. */
export const useDeliveries = (projectId: string, webhookId: string) =>
  useQuery({
    refetchInterval: TOLD_AGAIN_MS,
    queryKey: [...webhooksKey(projectId), webhookId],
    queryFn: () =>
      read(
        z.array(WebhookDelivery),
        api.GET("/api/projects/{projectId}/webhooks/{webhookId}/deliveries", {
          params: { path: { projectId, webhookId }, query: { limit: "10" } },
        }),
      ),
  });

export const useMakeWebhook = (projectId: string) =>
  useMutation({
    mutationFn: (url: string) => {
      const params = { path: { projectId }, header: { "idempotency-key": newUuid() } };
      return read(WebhookMade, api.POST("/api/projects/{projectId}/webhooks", { params, body: { url } }));
    },
    onSuccess: (_made, _given, _kept, { client }) => refresh(client, projectId),
  });

export const useWebhookAct = (projectId: string) =>
  useMutation({
    mutationFn: ({ act, webhookId }: { act: "end" | "resume"; webhookId: string }): Promise<unknown> => {
      const params = { path: { projectId, webhookId } };
      return act === "end"
        ? read(z.unknown(), api.DELETE("/api/projects/{projectId}/webhooks/{webhookId}", { params }))
        : read(Webhook, api.POST("/api/projects/{projectId}/webhooks/{webhookId}/resume", { params, body: {} }));
    },
    onSettled: (_done, _error, _given, _kept, { client }) => refresh(client, projectId),
  });
