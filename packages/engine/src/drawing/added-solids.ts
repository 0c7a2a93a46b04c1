import type { PointMm, Post, Scheme } from "@cornerway/schema";
import { sectionSizeMm } from "../catalog/section-size.ts";
import { planFrame, toSite } from "../geometry/place.ts";
import { padOutline } from "./pad-outline.ts";
import { placedObjects } from "./placed-object.ts";
import type { Solid } from "./solid.ts";

/** Something added to the units that has a body of its own. */
export type AddedSolid = Solid & { readonly kind: "post" | "beam" | "seat" | "pad" };

/** Posts, beams, seats and pads as solids in the site frame, mm. Pads show what is of them above ground, at least their top. */
export function addedSolids(scheme: Scheme): AddedSolid[] {
  const groundMm = scheme.site.groundZUm / 1000;
  return [
    ...scheme.pads.map((pad): AddedSolid => {
      const topMm = pad.topZUm / 1000;
      const outline = padOutline(pad).map(({ uMm, vMm }) => ({ xMm: uMm, yMm: vMm }));
      return { kind: "pad", id: pad.id, corners: upright(outline, Math.min(topMm, groundMm), topMm) };
    }),
    ...scheme.posts.map(postSolid),
    ...placedObjects(scheme).flatMap((object): AddedSolid[] =>
      object.kind === "beam" || object.kind === "seat"
        ? [{ kind: object.kind, id: object.id, corners: inTurn(object.box) }]
        : [],
    ),
  ];
}

type PlanPoint = Pick<PointMm, "xMm" | "yMm">;

function postSolid(post: Post): AddedSolid {
  const { depthMm, widthMm } = sectionSizeMm(post.section);
  const frame = planFrame(post.xUm, post.yUm, 0, post.turnMdeg);
  const outline = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([x = 0, y = 0]) => toSite(frame, { xMm: (x * widthMm) / 2, yMm: (y * depthMm) / 2, zMm: 0 }));
  return { kind: "post", id: post.id, corners: upright(outline, post.baseZUm / 1000, post.topZUm / 1000) };
}

const upright = (outline: readonly PlanPoint[], lowMm: number, highMm: number): PointMm[] =>
  [lowMm, highMm].flatMap((zMm) => outline.map((at) => ({ ...at, zMm })));

/** A box told side by side, each from end to end, as one goes round it: base, then top. */
const inTurn = (box: readonly PointMm[]): PointMm[] =>
  [0, 4].flatMap((level) => [0, 1, 3, 2].flatMap((at) => box.slice(level + at, level + at + 1)));
