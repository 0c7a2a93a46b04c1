import { Account, SignedInPlace } from "@cornerway/schema";
import type { LicenceChange, NameChange, PasswordChange, StampWordingChange } from "@cornerway/schema";
import { useMutation, useQuery } from "@tanstack/react-query";
import { z } from "zod";
import { api, read } from "./api/client.ts";
import { sessionKey } from "./session.ts";
import { readAgain } from "./read-again.ts";

export const accountKey = ["account"] as const;
export const signedInPlacesKey = [...accountKey, "sessions"] as const;

export const useAccount = () =>
  useQuery({ queryKey: accountKey, queryFn: () => read(Account, api.GET("/api/account")) });

export const useSignedInPlaces = () =>
  useQuery({
    queryKey: signedInPlacesKey,
    queryFn: () => read(z.array(SignedInPlace), api.GET("/api/account/sessions")),
  });

export const useChangeName = () =>
  useMutation({
    mutationFn: (change: NameChange) => read(z.unknown(), api.POST("/api/account/name", { body: change })),
    onSuccess: async (_done, _given, _kept, { client }) => {
      await readAgain(client, { queryKey: accountKey });
      await readAgain(client, { queryKey: sessionKey });
    },
  });

export const useStateLicence = () =>
  useMutation({
    mutationFn: (change: LicenceChange) => read(z.unknown(), api.POST("/api/account/licence", { body: change })),
    onSuccess: (_done, _given, _kept, { client }) => readAgain(client, { queryKey: accountKey }),
  });

export const useWordStamps = () =>
  useMutation({
    mutationFn: (change: StampWordingChange) =>
      read(z.unknown(), api.POST("/api/account/stamp-wording", { body: change })),
    onSuccess: (_done, _given, _kept, { client }) => readAgain(client, { queryKey: accountKey }),
  });

export const useChangePassword = () =>
  useMutation({
    mutationFn: (change: PasswordChange) => read(z.unknown(), api.POST("/api/account/password", { body: change })),
    onSuccess: (_done, _given, _kept, { client }) => readAgain(client, { queryKey: signedInPlacesKey }),
  });

/** Ends one sign-in by its id; `others` ends all but this one. */
export const useEndSessions = () =>
  useMutation({
    mutationFn: (id: string) =>
      read(
        z.unknown(),
        id === "others"
          ? api.DELETE("/api/account/sessions")
          : api.DELETE("/api/account/sessions/{sessionId}", { params: { path: { sessionId: id } } }),
      ),
    onSuccess: (_done, _given, _kept, { client }) => readAgain(client, { queryKey: signedInPlacesKey }),
  });
