import { MutationCache, QueryCache, QueryClient } from "@tanstack/react-query";
import { changePerson } from "./change-person.ts";
import { isProblem, mayPass, NoAnswer } from "./http.ts";
import { keepAnswer, standIn } from "./kept-answers.ts";

/** A sign-in that ran out sends the page back to the sign-in sheet. */
const onError = (error: unknown): void => {
  if (isProblem(error, "not-signed-in")) changePerson(queryClient, null);
};

/** A browser that knows it has no line does not wait for one. */
const mostTries = (): number => (navigator.onLine ? 4 : 0);

/** One cache for the page. What may pass is tried again; a refusal is an answer and is not. */
export const queryClient: QueryClient = new QueryClient({
  queryCache: new QueryCache({ onError }),
  mutationCache: new MutationCache({ onError }),
  defaultOptions: {
    queries: {
      staleTime: 30_000,
      retry: (times, error) => mayPass(error) && times < mostTries(),
      retryDelay: (times) => Math.min(8000, 400 * 2 ** times),
      refetchOnWindowFocus: false,
      networkMode: "always",
    },
    mutations: { networkMode: "always" },
  },
});

// Whatever is laid into the cache is kept, fetched or set: a sign-in is set. The last answer stands in from the first
// try on that nobody answers, while the next ones go on.
queryClient.getQueryCache().subscribe((event) => {
  if (event.type !== "updated") return;
  if (event.action.type === "success") keepAnswer(queryClient, event.query);
  const unanswered = event.action.type === "failed" || event.action.type === "error" ? event.action.error : null;
  if (unanswered instanceof NoAnswer) void standIn(queryClient, event.query);
});
