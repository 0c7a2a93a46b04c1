import type { FastifyRequest } from "fastify";

/**
 * True for a request to a route under /api. The route is asked, not the address: an address may spell the same route with
 * escaped letters (`/%61pi/…`). Where no route matches, the address is all there is.
 */
export const isOfApi = ({ routeOptions, url }: FastifyRequest): boolean =>
  (routeOptions.url ?? url).startsWith("/api/");
