import { faceFrame, placeContainer, pointOnFace, placedObjects } from "@cornerway/engine";
import type { PointMm, Scheme } from "@cornerway/schema";

/** The middle of an element as one sees it: of a unit's south-facing side, of an opening, of a post. Null when unknown. */
export function elementPlace(scheme: Scheme, id: string): PointMm | null {
  const unit = scheme.containers.find((container) => container.id === id);
  if (unit !== undefined) {
    const { baseZMm, topZMm } = placeContainer(unit);
    return { xMm: unit.xUm / 1000, yMm: unit.yUm / 1000, zMm: (baseZMm + topZMm) / 2 };
  }
  const opening = scheme.openings.find((cut) => cut.id === id);
  const holder = scheme.containers.find((container) => container.id === opening?.containerId);
  if (opening !== undefined && holder !== undefined)
    return pointOnFace(
      faceFrame(placeContainer(holder), opening.face),
      (opening.offsetUm + opening.widthUm / 2) / 1000,
      (opening.sillUm + opening.heightUm / 2) / 1000,
    );
  const post = scheme.posts.find((standing) => standing.id === id);
  if (post !== undefined)
    return { xMm: post.xUm / 1000, yMm: post.yUm / 1000, zMm: (post.baseZUm + post.topZUm) / 2000 };
  const pad = scheme.pads.find((lying) => lying.id === id);
  if (pad !== undefined) return { xMm: pad.xUm / 1000, yMm: pad.yUm / 1000, zMm: pad.topZUm / 1000 };
  return placedObjects(scheme).find((object) => object.id === id)?.at ?? null;
}
