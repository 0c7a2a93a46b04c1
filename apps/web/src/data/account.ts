import { Account, SignedInPlace } from "@cornerway/schema";
import type { LicenceChange, NameChange, PasswordChange } from "@cornerway/schema";
import { useMutation, useQuery } from "@tanstack/react-query";
import { z } from "zod";
import { http } from "./http.ts";
import { sessionKey } from "./session.ts";

const path = "/api/account";
export const accountKey = ["account"] as const;
export const signedInPlacesKey = [...accountKey, "sessions"] as const;

export const useAccount = () => useQuery({ queryKey: accountKey, queryFn: () => http(Account, path) });

export const useSignedInPlaces = () =>
  useQuery({ queryKey: signedInPlacesKey, queryFn: () => http(z.array(SignedInPlace), `${path}/sessions`) });

const post = (rest: string, body: unknown) => http(z.unknown(), `${path}${rest}`, { method: "POST", body });

export const useChangeName = () =>
  useMutation({
    mutationFn: (change: NameChange) => post("/name", change),
    onSuccess: async (_done, _given, _kept, { client }) => {
      await client.invalidateQueries({ queryKey: accountKey });
      await client.invalidateQueries({ queryKey: sessionKey });
    },
  });

export const useStateLicence = () =>
  useMutation({
    mutationFn: (change: LicenceChange) => post("/licence", change),
    onSuccess: (_done, _given, _kept, { client }) => client.invalidateQueries({ queryKey: accountKey }),
  });

export const useChangePassword = () =>
  useMutation({
    mutationFn: (change: PasswordChange) => post("/password", change),
    onSuccess: (_done, _given, _kept, { client }) => client.invalidateQueries({ queryKey: signedInPlacesKey }),
  });

/** Ends one sign-in by its id, or all but this one. */
export const useEndSessions = () =>
  useMutation({
    mutationFn: (id: string | "others") =>
      http(z.unknown(), id === "others" ? `${path}/sessions` : `${path}/sessions/${id}`, { method: "DELETE" }),
    onSuccess: (_done, _given, _kept, { client }) => client.invalidateQueries({ queryKey: signedInPlacesKey }),
  });
