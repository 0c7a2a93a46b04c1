import type { Post, Scheme } from "@cornerway/schema";
import type { Side } from "./side.ts";
import { project } from "./projection.ts";
import { sectionSizeMm } from "../catalog/section-size.ts";
import type { PaperRect } from "./corrugation.ts";
import type { ElevationFace } from "./elevation-faces.ts";
import { onFaceMm } from "./on-face.ts";

/** An added post as an elevation shows it; `behind` when a face stands before it: drawn dashed. */
export type ElevationPost = PaperRect & { post: Post; depthMm: number; behind: boolean };

export function elevationPosts(scheme: Scheme, side: Side, faces: readonly ElevationFace[]): ElevationPost[] {
  return scheme.posts.map((post) => {
    const half = sectionWidthMm(post.section) / 2;
    const z0Mm = post.baseZUm / 1000;
    const z1Mm = post.topZUm / 1000;
    const { uMm, depthMm } = project(side, { xMm: post.xUm / 1000, yMm: post.yUm / 1000, zMm: z0Mm });
    const behind = faces.some(
      (face) =>
        face.nearestMm < depthMm - onFaceMm &&
        uMm > face.u0Mm &&
        uMm < face.u1Mm &&
        z1Mm > face.z0Mm + 200 &&
        z0Mm < face.z1Mm - 200,
    );
    return { post, depthMm, behind, u0Mm: uMm - half, u1Mm: uMm + half, z0Mm, z1Mm };
  });
}

/** The breadth a post is drawn with, mm: "HSS 102×102×6.4" is 102 wide, "W 150 x 13" 150, "HSS4x4x1/4" 101.6. */
export const sectionWidthMm = (section: string): number => sectionSizeMm(section).depthMm;
