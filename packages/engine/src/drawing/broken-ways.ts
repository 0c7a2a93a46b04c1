import type { Mark, PointMm } from "@cornerway/schema";
import type { ElevationFace, ElevationOpening } from "./elevation-faces.ts";
import { project, type ViewPoint } from "./projection.ts";
import type { Side } from "./side.ts";

/** A way load would have to go and cannot, mm on the paper of an elevation. */
export type BrokenWay = { readonly markId: string; readonly points: readonly ViewPoint[] };

type Seen = { readonly side: Side; readonly faces: readonly ElevationFace[]; readonly groundMm: number };

/** Where the path ends on an elevation: straight down from what nothing holds, round an opening that nothing bridges. */
export const brokenWays = (marks: readonly Mark[], seen: Seen): BrokenWay[] =>
  marks
    .filter(({ verdict }) => verdict === "does not work")
    .flatMap((mark) => waysOf(mark, seen).map((points) => ({ markId: mark.id, points })));

function waysOf(mark: Mark, seen: Seen): ViewPoint[][] {
  const [first] = mark.elements;
  switch (mark.fact.kind) {
    case "tips-over":
    case "corner-on-air":
      return isSeen(first, seen) ? [straightDown(mark.at, seen)] : [];
    case "load-over-opening":
      return openingsOf(first, seen).flatMap((opening) => roundOpening(mark.at, opening, seen));
    default:
      return [];
  }
}

const isSeen = (unitId: string | undefined, { faces }: Seen): boolean =>
  faces.some(({ container, beyond }) => container.id === unitId && !beyond);

const openingsOf = (id: string | undefined, { faces }: Seen): ElevationOpening[] =>
  faces.filter(({ beyond }) => !beyond).flatMap(({ openings }) => openings.filter(({ opening }) => opening.id === id));

function straightDown(at: PointMm, { side, groundMm }: Seen): ViewPoint[] {
  const from = project(side, at);
  return [
    { uMm: from.uMm, vMm: from.vMm },
    { uMm: from.uMm, vMm: groundMm },
  ];
}

/** The dashes keep this far off the edge of an opening, mm. */
const ASIDE_MM = 140;

/** To either side over the head, down beside the jamb, and back under the sill. */
function roundOpening(at: PointMm, { u0Mm, u1Mm, z0Mm, z1Mm }: ElevationOpening, { side }: Seen): ViewPoint[][] {
  const from = project(side, at);
  return [u0Mm - ASIDE_MM, u1Mm + ASIDE_MM].map((besideMm) => [
    { uMm: from.uMm, vMm: from.vMm },
    { uMm: from.uMm, vMm: z1Mm + ASIDE_MM },
    { uMm: besideMm, vMm: z1Mm + ASIDE_MM },
    { uMm: besideMm, vMm: z0Mm },
  ]);
}
