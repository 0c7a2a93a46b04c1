import { onFaceMm, type PaperRect, type ElevationFace, type ElevationPost } from "@cornerway/engine";
import type { Mark, PointMm, Verdict } from "@cornerway/schema";
import type { HatchSize } from "../../look/hatch.ts";
import type { Side } from "../contract.ts";
import { project } from "../view-transform.ts";

/** An area of an elevation that carries a verdict's hatch. */
export type HatchedPlace = PaperRect & { key: string; markId: string; verdict: Verdict; size: HatchSize };

type Seen = { side: Side; faces: readonly ElevationFace[]; posts: readonly ElevationPost[] };

/** Where each mark is drawn on an elevation. What works as built stays bare; what is not checked has a dashed edge. */
export const hatchedPlaces = (marks: readonly Mark[], seen: Seen): HatchedPlace[] =>
  marks
    .filter(({ verdict }) => verdict !== "works as built")
    .flatMap((mark) =>
      placesOf(mark, seen).map((place, index) => ({
        ...place,
        key: `${mark.id}-${index}`,
        markId: mark.id,
        verdict: mark.verdict,
      })),
    );

type Place = PaperRect & { size: HatchSize };

function placesOf(mark: Mark, seen: Seen): Place[] {
  const { fact } = mark;
  switch (fact.kind) {
    case "borne-on-rail":
      return fact.crossings.flatMap(({ at }) => bandUnder(at, seen, 620, 130));
    case "overhang":
      return bandUnder(mark.at, seen, 700, 130);
    case "corner-on-air":
    case "made-connection":
    case "rocks":
    case "stands-clear":
    case "off-its-pad":
      return bandUnder(mark.at, seen, 340, 130);
    case "tips-over":
    case "near-tipping":
    case "mechanism":
    case "collision":
    case "below-ground":
      return facesOf(mark.elements[0], seen).map((face) => ({ ...rectOf(face), size: "wide" }));
    case "post-off-centre":
      return postsOf(mark, seen);
    default:
      return mark.verdict === "not checked" ? [] : postsOf(mark, seen);
  }
}

/** A band just under a bearing, on the face it lies on. */
function bandUnder(at: PointMm, seen: Seen, halfMm: number, deepMm: number): Place[] {
  const { uMm, vMm, depthMm } = project(seen.side, at);
  const face = seen.faces.find(
    (each) =>
      !each.beyond &&
      Math.abs(each.depthMm - depthMm) < onFaceMm &&
      uMm > each.u0Mm - 300 &&
      uMm < each.u1Mm + 300 &&
      vMm <= each.z1Mm + 60 &&
      vMm >= each.z0Mm - 60,
  );
  if (face === undefined) return [];
  const from = Math.max(face.u0Mm, uMm - halfMm);
  const to = Math.min(face.u1Mm, uMm + halfMm);
  return from < to ? [{ u0Mm: from, u1Mm: to, z0Mm: vMm - deepMm, z1Mm: vMm, size: "small" }] : [];
}

const facesOf = (id: string | undefined, { faces }: Seen) =>
  faces.filter((face) => face.container.id === id && !face.beyond);

const postsOf = (mark: Mark, { posts }: Seen): Place[] =>
  posts.filter(({ post }) => mark.elements[0] === post.id).map((place) => ({ ...rectOf(place), size: "small" }));

const rectOf = ({ u0Mm, u1Mm, z0Mm, z1Mm }: PaperRect): PaperRect => ({ u0Mm, u1Mm, z0Mm, z1Mm });
