import type { Assessment, PathStretch } from "@cornerway/schema";
import type { Side } from "../contract.ts";
import type { ElevationFace } from "../elevation/elevation-faces.ts";
import type { ElevationPost } from "../elevation/elevation-posts.ts";
import { onFaceMm } from "../marks/hatched-places.ts";
import { project, type ViewPoint } from "../view-transform.ts";

/** One length of the load path as an elevation shows it. */
export type PathStroke = {
  stretch: PathStretch;
  from: ViewPoint;
  to: ViewPoint;
  /** Added steel is prussian, the container's own ink. */
  added: boolean;
  /** Here the load leaves the corners: the stroke stops with a long break. */
  breaks: boolean;
  /** Here the load leaves the drawing, into the ground or off the corners: its figure is written. */
  figure: boolean;
};

/** Strokes in the posts an elevation shows: on a face at the front of its storey, or an added post not hidden. */
export function pathStrokes(assessment: Assessment, side: Side, faces: readonly ElevationFace[], posts: readonly ElevationPost[]): PathStroke[] {
  const feet = feetOf(assessment);
  return assessment.path
    .filter((stretch) => (stretch.via === "corner post" ? onFront(stretch, side, faces) : shownPost(stretch, posts)))
    .map((stretch) => {
      const from = project(side, stretch.from);
      const to = project(side, stretch.to);
      const breaks = feet.leaving.some((point) => near(point, stretch.to));
      const figure = breaks || !feet.goingOn.some((point) => near(point, stretch.to));
      return { stretch, from, to, added: stretch.via === "added post", breaks, figure };
    })
    .filter(({ from, to }) => Math.abs(from.uMm - to.uMm) < Math.abs(from.vMm - to.vMm));
}

type At = PathStretch["from"];

/** Where stretches off the corners begin, and where posts go on below. */
function feetOf({ path }: Assessment): { leaving: At[]; goingOn: At[] } {
  const posts = path.filter(({ via }) => via === "corner post" || via === "added post");
  return {
    leaving: path.filter(({ leavesCorners }) => leavesCorners).map(({ via, from, to }) => (via === "corner post" ? to : from)),
    goingOn: posts.map(({ from }) => from),
  };
}

/** Foot of one post and head of the next are this near, mm: a fitting's height, a seat's packing, a fitting's width. */
const near = (a: At, b: At): boolean =>
  Math.abs(a.xMm - b.xMm) < 260 && Math.abs(a.yMm - b.yMm) < 260 && Math.abs(a.zMm - b.zMm) < 320;

const onFront = (stretch: PathStretch, side: Side, faces: readonly ElevationFace[]): boolean => {
  const { depthMm, uMm } = project(side, stretch.from);
  return faces.some(
    (face) =>
      face.container.id === stretch.elementId &&
      !face.beyond &&
      Math.abs(face.depthMm - depthMm) < onFaceMm &&
      uMm > face.u0Mm - 60 &&
      uMm < face.u1Mm + 60,
  );
};

const shownPost = (stretch: PathStretch, posts: readonly ElevationPost[]): boolean =>
  stretch.via === "added post" && posts.some(({ post, behind }) => post.id === stretch.elementId && !behind);
