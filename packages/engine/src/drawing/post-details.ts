import type { Post, Scheme } from "@cornerway/schema";
import { findSection } from "../catalog/sections/find-section.ts";
import { sectionSizeMm } from "../catalog/section-size.ts";
import { statedPostPlate } from "../catalog/stated-post-plate.ts";
import { weldLegMm } from "../cost/weld-length.ts";
import { placeContainer } from "../geometry/place.ts";
import type { Detail, DetailPart } from "./detail.ts";
import { bottomRailCut, boundsOf, isWithin } from "./detail-parts.ts";

/** What is shown of a member that runs on, mm. */
const shownMm = 420;

/** A section cut along its length: its two walls where it is a tube, else the whole of it. */
function shaft(name: string, from: number, to: number): DetailPart[] {
  const { widthMm } = sectionSizeMm(name);
  const section = findSection(name);
  const part = (u0Mm: number, u1Mm: number): DetailPart => ({
    ...{ what: "added steel", name, u0Mm, u1Mm, z0Mm: from, z1Mm: to },
  });
  if (section?.kind !== "tube") return [part(-widthMm / 2, widthMm / 2)];
  const { wallMm } = section;
  return [part(-widthMm / 2, wallMm - widthMm / 2), part(widthMm / 2 - wallMm, widthMm / 2)];
}

/** A member within this much over a head is held by it, mm. */
const heldWithinMm = 400;

export const postDetails = (scheme: Scheme, post: Post): Detail[] => [headOf(scheme, post), footOf(scheme, post)];

function headOf(scheme: Scheme, post: Post): Detail {
  const top = post.topZUm / 1000;
  const at = { xMm: post.xUm / 1000, yMm: post.yUm / 1000 };
  const over = scheme.containers
    .map(placeContainer)
    .filter((unit) => unit.baseZMm >= top - 1 && unit.baseZMm < top + heldWithinMm && isWithin(unit, at, edgeMm))
    .toSorted((a, b) => a.baseZMm - b.baseZMm)[0];
  const held = over === undefined ? [] : bottomRailCut(over, over.baseZMm - top);
  const rail = over === undefined ? undefined : boundsOf(held);
  const { widthMm } = sectionSizeMm(post.section);
  const { thicknessMm } = statedPostPlate;
  // Under what bears on it: the post is as long as drawn, its plate within that.
  const plate = rail === undefined ? [] : [postPlate(widthMm, -thicknessMm)];
  const headMm = plate[0]?.z0Mm ?? 0;
  return {
    ...{ subject: "head of post", tag: post.tag },
    parts: [...shaft(post.section, -shownMm, headMm), ...plate, ...held],
    welds: plate.map(({ z0Mm }) => ({ uMm: widthMm / 2, zMm: z0Mm, legMm: weldLegMm, around: true })),
    heights: rail === undefined || rail.z0Mm <= 0 ? [] : [{ fromMm: 0, toMm: rail.z0Mm, atMm: rail.u1Mm }],
  };
}

function footOf(scheme: Scheme, post: Post): Detail {
  const base = post.baseZUm / 1000;
  const pad = scheme.pads.find(
    ({ xUm, yUm, lengthUm, widthUm, topZUm }) =>
      Math.abs(xUm - post.xUm) * 2 <= lengthUm && Math.abs(yUm - post.yUm) * 2 <= widthUm && topZUm <= post.baseZUm,
  );
  const half = pad === undefined ? 0 : Math.min(pad.lengthUm / 2000, shownMm);
  const top = pad === undefined ? 0 : pad.topZUm / 1000 - base;
  const under: DetailPart[] =
    pad === undefined
      ? []
      : [{ what: "concrete", name: pad.tag, u0Mm: -half, u1Mm: half, z0Mm: top - pad.depthUm / 1000, z1Mm: top }];
  const { widthMm } = sectionSizeMm(post.section);
  const plate = pad === undefined ? [] : [postPlate(widthMm, top)];
  const foot = plate[0]?.z1Mm ?? 0;
  return {
    ...{ subject: "foot of post", tag: post.tag },
    parts: [...under, ...shaft(post.section, foot, shownMm), ...plate],
    welds: plate.map(({ z1Mm }) => ({ uMm: widthMm / 2, zMm: z1Mm, legMm: weldLegMm, around: true })),
    heights: under.map(({ z0Mm, z1Mm, u1Mm }) => ({ fromMm: z0Mm, toMm: z1Mm, atMm: u1Mm })),
  };
}

/** The plate at either end of a post from its underside, as stated and checked, since plates are not drawn. */
function postPlate(postWidthMm: number, footMm: number): DetailPart {
  const { outstandMm, thicknessMm } = statedPostPlate;
  const half = postWidthMm / 2 + outstandMm;
  const wide = Math.round(2 * half);
  return {
    ...{ what: "plate", name: `stated plate ${wide}×${wide}×${thicknessMm}` },
    ...{ u0Mm: -half, u1Mm: half, z0Mm: footMm, z1Mm: footMm + thicknessMm },
  };
}

/** A post may stand with its axis this far outside what it holds, mm: half a common section. */
const edgeMm = 60;
