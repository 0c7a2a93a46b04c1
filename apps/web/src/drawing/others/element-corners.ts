import { faceFrame, placeContainer, pointOnFace, sectionWidthMm, solidCorners } from "@cornerway/engine";
import type { PointMm, Scheme } from "@cornerway/schema";

/** Corners of an element in the site, mm, by which a view draws a line round it; none for what has no size of its own. */
export function elementCorners(scheme: Scheme, id: string): PointMm[] {
  const unit = scheme.containers.find((each) => each.id === id);
  if (unit !== undefined) return solidCorners(placeContainer(unit));
  const opening = scheme.openings.find((each) => each.id === id);
  const holder = scheme.containers.find((each) => each.id === opening?.containerId);
  if (opening !== undefined && holder !== undefined) {
    const frame = faceFrame(placeContainer(holder), opening.face);
    const [u, v] = [opening.offsetUm / 1000, opening.sillUm / 1000];
    const [wide, high] = [opening.widthUm / 1000, opening.heightUm / 1000];
    return [0, 1].flatMap((across) => [0, 1].map((up) => pointOnFace(frame, u + across * wide, v + up * high)));
  }
  const post = scheme.posts.find((each) => each.id === id);
  if (post !== undefined) {
    const half = sectionWidthMm(post.section) / 2;
    return boxAt(post, half, half, [post.baseZUm / 1000, post.topZUm / 1000]);
  }
  const pad = scheme.pads.find((each) => each.id === id);
  if (pad === undefined) return [];
  const top = pad.topZUm / 1000;
  return boxAt(pad, pad.lengthUm / 2000, pad.widthUm / 2000, [top - pad.depthUm / 1000, top]);
}

const boxAt = (
  { xUm, yUm }: { xUm: number; yUm: number },
  halfXMm: number,
  halfYMm: number,
  heightsMm: readonly number[],
): PointMm[] =>
  heightsMm.flatMap((zMm) =>
    [-1, 1].flatMap((x) => [-1, 1].map((y) => ({ xMm: xUm / 1000 + x * halfXMm, yMm: yUm / 1000 + y * halfYMm, zMm }))),
  );
