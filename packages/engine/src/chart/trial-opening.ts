import type { Opening, Scheme } from "@cornerway/schema";
import type { ChartRequest } from "./chart.ts";

/** A name no drawn opening has, that sorts after all of them. */
const TRIED = "~tried";

/** By what name the opening of a chart is known wherever it is tried. */
export const triedId = ({ openingId }: Pick<ChartRequest, "openingId">): string => openingId ?? TRIED;

/** The opening of a chart at one place and width, mm. */
export const triedOpening = (request: ChartRequest, centreMm: number, widthMm: number): Opening => ({
  id: triedId(request),
  tag: "",
  containerId: request.containerId,
  face: request.face,
  use: request.use,
  offsetUm: Math.round((centreMm - widthMm / 2) * 1000),
  sillUm: request.sillUm,
  widthUm: Math.round(widthMm * 1000),
  heightUm: request.heightUm,
  framed: request.framed,
  ...(request.framing && { framing: request.framing }),
});

/** The same opening with bare edges. */
export function bareEdged(request: ChartRequest): ChartRequest {
  const { framing: _, framedWhereNeeded: __, ...asked } = request;
  return { ...asked, framed: false };
}

/** The scheme without the opening a chart is asked for. */
export const without = (scheme: Scheme, { openingId }: ChartRequest): Scheme => ({
  ...scheme,
  openings: scheme.openings.filter(({ id }) => id !== openingId),
});

/** The scheme with the opening tried at one place and width, mm. */
export function withTried(scheme: Scheme, request: ChartRequest, centreMm: number, widthMm: number): Scheme {
  const bare = without(scheme, request);
  return { ...bare, openings: [...bare.openings, triedOpening(request, centreMm, widthMm)] };
}
