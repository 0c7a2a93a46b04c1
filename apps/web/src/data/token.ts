import { AccessToken, AccessTokenMade } from "@cornerway/schema";
import type { NewAccessToken } from "@cornerway/schema";
import { useMutation, useQuery } from "@tanstack/react-query";
import { z } from "zod";
import { newUuid } from "../tools/new-uuid.ts";
import { accountKey } from "./account.ts";
import { api, read } from "./api/client.ts";
import { readAgain } from "./read-again.ts";

export const tokensKey = [...accountKey, "tokens"] as const;

export const useTokens = () =>
  useQuery({ queryKey: tokensKey, queryFn: () => read(z.array(AccessToken), api.GET("/api/tokens")) });

/** Makes a token; pressed once, it is made once, however often the request is sent. */
export const useMakeToken = () =>
  useMutation({
    mutationFn: (body: NewAccessToken) =>
      read(AccessTokenMade, api.POST("/api/tokens", { body, params: { header: { "idempotency-key": newUuid() } } })),
    onSuccess: (_made, _given, _kept, { client }) => readAgain(client, { queryKey: tokensKey }),
  });

export const useWithdrawToken = () =>
  useMutation({
    mutationFn: (tokenId: string) =>
      read(z.unknown(), api.DELETE("/api/tokens/{tokenId}", { params: { path: { tokenId } } })),
    onSettled: (_done, _error, _given, _kept, { client }) => readAgain(client, { queryKey: tokensKey }),
  });
