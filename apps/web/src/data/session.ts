import { Session } from "@cornerway/schema";
import type { SignIn } from "@cornerway/schema";
import { useQuery } from "@tanstack/react-query";
import { z } from "zod";
import { csrfToken } from "./csrf-token.ts";
import { api, read } from "./api/client.ts";
import { isProblem } from "./http.ts";

export const sessionKey = ["session"] as const;

/** Tells that someone signed in from this browser; no secret. Without it nobody is asked for, and nothing is refused. */
const hint = "cornerway.signed-in";

export const mayBeSignedIn = (): boolean => localStorage.getItem(hint) !== null;

/** Who is signed in, or null. */
export async function fetchSession(): Promise<Session | null> {
  if (!mayBeSignedIn()) return null;
  try {
    return keepSession(await read(Session, api.GET("/api/session")));
  } catch (error) {
    if (isProblem(error, "not-signed-in")) {
      localStorage.removeItem(hint);
      return null;
    }
    throw error;
  }
}

export const useSession = () => useQuery({ queryKey: sessionKey, queryFn: fetchSession, staleTime: 5 * 60_000 });

export const signIn = async (words: SignIn): Promise<Session> =>
  keepSession(await read(Session, api.POST("/api/session", { body: words })));

export async function signOut(): Promise<void> {
  await read(z.unknown(), api.DELETE("/api/session"));
  csrfToken.value = "";
  localStorage.removeItem(hint);
}

/** Holds the token of a session that was opened here. */
export function keepSession(session: Session): Session {
  csrfToken.value = session.csrfToken;
  localStorage.setItem(hint, "yes");
  return session;
}
