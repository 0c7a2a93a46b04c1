import type { QueryClient, QueryFilters } from "@tanstack/react-query";

/**
 * What is kept under these filters is out of date: whatever is on screen is asked for again. A first answer still on its
 * way was asked for before the change, and invalidating alone lets it stand as the newest, so it is dropped and asked anew.
 */
export async function readAgain(client: QueryClient, filters: QueryFilters): Promise<void> {
  await client.cancelQueries({
    ...filters,
    predicate: (query) =>
      query.state.data === undefined && query.state.fetchStatus !== "idle" && (filters.predicate?.(query) ?? true),
  });
  await client.invalidateQueries(filters);
}
