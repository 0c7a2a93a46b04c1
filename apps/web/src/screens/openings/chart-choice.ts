import type { ChartFace, ChartRequest } from "@cornerway/engine";
import type { Opening, Scheme } from "@cornerway/schema";

/** What the chart is asked of: a side, and an opening in it or a new one. */
export type ChartChoice = {
  readonly containerId: string;
  readonly face: ChartFace;
  readonly openingId: string | null;
};

export const chartFaces: readonly ChartFace[] = ["left", "right", "front"];

export const isChartFace = (face: string): face is ChartFace => chartFaces.some((one) => one === face);

/** Openings a chart can be asked for, on one side. */
export const openingsOn = ({ openings }: Scheme, containerId: string, face: ChartFace): Opening[] =>
  openings.filter((opening) => opening.containerId === containerId && opening.face === face);

/** The first opening in a sheet wall, else the right side of the first container; null on an empty scheme. */
export function firstChoice(scheme: Scheme): ChartChoice | null {
  for (const { id, containerId, face } of scheme.openings)
    if (isChartFace(face)) return { containerId, face, openingId: id };
  const [first] = scheme.containers;
  return first === undefined ? null : { containerId: first.id, face: "right", openingId: null };
}

/** The choice as far as it still stands on this scheme. */
export function standingChoice(scheme: Scheme, choice: ChartChoice | null): ChartChoice | null {
  if (choice === null || !scheme.containers.some(({ id }) => id === choice.containerId)) return firstChoice(scheme);
  const here = openingsOn(scheme, choice.containerId, choice.face);
  return here.some(({ id }) => id === choice.openingId) ? choice : { ...choice, openingId: null };
}

/** A new opening is an ordinary door until something else is said, µm. */
const ORDINARY = { sillUm: 180_000, heightUm: 2_200_000, use: "door", framed: true, framedWhereNeeded: true } as const;

/** With bare edges where that works, elsewhere framed with its own frame or the stated set. */
export function requestOf(scheme: Scheme, { containerId, face, openingId }: ChartChoice): ChartRequest {
  const drawn = scheme.openings.find(({ id }) => id === openingId);
  if (drawn === undefined) return { containerId, face, ...ORDINARY };
  const { sillUm, heightUm, use, framing, id } = drawn;
  const size = { sillUm, heightUm, use };
  const frame = { framed: true, framedWhereNeeded: true, ...(framing && { framing }) } as const;
  return { containerId, face, ...size, ...frame, openingId: id };
}
