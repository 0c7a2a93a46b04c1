import { MutationCache, QueryCache, QueryClient } from "@tanstack/react-query";
import { changePerson } from "./change-person.ts";
import { isProblem, mayPass } from "./http.ts";

/** A sign-in that ran out sends the page back to the sign-in sheet. */
const onError = (error: unknown): void => {
  if (isProblem(error, "not-signed-in")) changePerson(queryClient, null);
};

/** One cache for the page. What may pass is tried again; a refusal is an answer and is not. */
export const queryClient: QueryClient = new QueryClient({
  queryCache: new QueryCache({ onError }),
  mutationCache: new MutationCache({ onError }),
  defaultOptions: {
    queries: {
      staleTime: 30_000,
      retry: (times, error) => mayPass(error) && times < 4,
      retryDelay: (times) => Math.min(8000, 400 * 2 ** times),
      refetchOnWindowFocus: false,
    },
  },
});
