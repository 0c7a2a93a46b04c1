import { QueryClient } from "@tanstack/react-query";
import { NoAnswer } from "./http.ts";

/** One cache for the page. A dead line is tried again; a refusal is an answer and is not. */
export const queryClient = new QueryClient({
  defaultOptions: {
    queries: {
      staleTime: 30_000,
      retry: (times, error) => error instanceof NoAnswer && times < 4,
      retryDelay: (times) => Math.min(8000, 400 * 2 ** times),
      refetchOnWindowFocus: false,
    },
  },
});
