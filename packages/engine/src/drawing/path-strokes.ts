import type { PathStretch } from "@cornerway/schema";
import type { SolvedStretch } from "../flow/solved-path.ts";
import type { Side } from "./side.ts";
import { project, type ViewPoint } from "./projection.ts";
import type { ElevationFace } from "./elevation-faces.ts";
import type { ElevationPost } from "./elevation-posts.ts";
import { onFaceMm } from "./on-face.ts";

/** A length of the path, and how the force in it changes on the way where that is solved. */
export type DrawnStretch = PathStretch & Partial<Pick<SolvedStretch, "alongKn">>;

/** One length of the load path as an elevation shows it. */
export type PathStroke = {
  stretch: DrawnStretch;
  from: ViewPoint;
  to: ViewPoint;
  /** Added steel is prussian, the container's own ink. */
  added: boolean;
  /** Here the load leaves the corners: the stroke stops with a long break. */
  breaks: boolean;
  /** Where its figure is written: at the foot, at the head (a seat on a post), or nowhere since the stroke goes on. */
  figureAt: "foot" | "head" | null;
  /** A seat has no length of its own: drawn as a stub into what carries it. */
  stub: boolean;
};

/** Strokes on the faces at the front of an elevation: posts, added posts, and seats where a load arrives off the corners. */
export function pathStrokes(
  { path }: { readonly path: readonly DrawnStretch[] },
  side: Side,
  faces: readonly ElevationFace[],
  posts: readonly ElevationPost[],
): PathStroke[] {
  const own = path.filter((stretch) =>
    stretch.via === "corner post" ? onFront(stretch, side, faces) : shownPost(stretch, posts),
  );
  const feet = own.map(({ to }) => to);
  const heads = own.map(({ from }) => from);
  const seats = path.filter(
    (stretch) =>
      stretch.via === "seat" && seatOnFront(stretch, side, faces) && !feet.some((foot) => near(foot, stretch.from)),
  );
  return [
    ...own.map((stretch): PathStroke => {
      const goesOn = heads.some((head) => near(head, stretch.to));
      return {
        ...onPaper(stretch, side),
        breaks: stretch.leavesCorners,
        figureAt: stretch.leavesCorners || !goesOn ? "foot" : null,
        stub: false,
      };
    }),
    ...seats.map((stretch): PathStroke => {
      const onPost = heads.some((head) => near(head, stretch.to));
      return { ...onPaper(stretch, side), breaks: !onPost, figureAt: onPost ? "head" : "foot", stub: !onPost };
    }),
  ];
}

const onPaper = (stretch: DrawnStretch, side: Side) => ({
  stretch,
  from: project(side, stretch.from),
  to: project(side, stretch.to),
  added: stretch.via === "added post",
});

type At = PathStretch["from"];

/** Foot of one post and head of the next are this near, mm: a fitting's height, a seat's packing, a fitting's width. */
const near = (a: At, b: At): boolean =>
  Math.abs(a.xMm - b.xMm) < 260 && Math.abs(a.yMm - b.yMm) < 260 && Math.abs(a.zMm - b.zMm) < 320;

const onFront = (stretch: PathStretch, side: Side, faces: readonly ElevationFace[]): boolean => {
  const { depthMm, uMm } = project(side, stretch.from);
  return faces.some((face) => face.container.id === stretch.elementId && isOn(face, uMm, depthMm));
};

/** A seat shows where the face of the unit under it does. */
const seatOnFront = (stretch: PathStretch, side: Side, faces: readonly ElevationFace[]): boolean => {
  const { depthMm, uMm, vMm } = project(side, stretch.to);
  return faces.some((face) => isOn(face, uMm, depthMm) && Math.abs(face.z1Mm - vMm) < 60);
};

const isOn = (face: ElevationFace, uMm: number, depthMm: number): boolean =>
  !face.beyond && Math.abs(face.depthMm - depthMm) < onFaceMm && uMm > face.u0Mm - 60 && uMm < face.u1Mm + 60;

const shownPost = (stretch: PathStretch, posts: readonly ElevationPost[]): boolean =>
  stretch.via === "added post" && posts.some(({ post, behind }) => post.id === stretch.elementId && !behind);
