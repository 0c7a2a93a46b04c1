import type { Scheme, Tie } from "@cornerway/schema";
import { tiePlace, type FacePlace } from "../bearing/tie-place.ts";
import { statedTie } from "../catalog/stated-tie.ts";
import { buildingOf, type Unit } from "../geometry/building.ts";
import type { PaperRect } from "./corrugation.ts";
import type { Detail, DetailPart } from "./detail.ts";
import { bottomRailCut, own, topRailCut } from "./detail-parts.ts";

/** A corner post is shown this far over and under a tie, mm. */
const shownMm = 130;

/** A tie cut across the gap it bridges: what it is made to on either side, and the stated plate; none where it serves nothing. */
export function tieDetail(scheme: Scheme, tie: Tie): Detail[] {
  const building = buildingOf(scheme);
  const place = tiePlace(building, tie);
  if ("why" in place) return [];
  const [a, b] = [tie.aId, tie.bId].map((id) => building.unitById.get(id));
  if (a === undefined || b === undefined) return [];
  const half = place.gapMm / 2;
  const left = joined(a, place.meets[0], place.on[0], { half, side: -1 });
  const right = joined(b, place.meets[1], place.on[1], { half, side: 1 });
  const { lengthMm, widthMm, thicknessMm, weldMm, legMm } = statedTie;
  const on = Math.max(left.faceMm, right.faceMm);
  const reach = lengthMm / 2;
  const isStated = tie.stiffnessNPerMm === undefined;
  const what = isStated ? "plate" : "device";
  const named = (lies: string): string =>
    isStated ? `stated plate ${widthMm}×${thicknessMm}, ${lies}` : `tie of ${tie.stiffnessNPerMm} N/mm, ${lies}`;
  const level: DetailPart = { what, name: named("level"), ...across(-reach, reach, on, on + thicknessMm) };
  const upright: DetailPart = {
    what: "device",
    name: named("upright"),
    ...across(-reach, reach, -widthMm / 2, widthMm / 2),
  };
  return [
    {
      ...{ subject: "tie", tag: tie.tag },
      parts: [...left.parts, ...right.parts, level, ...(tie.carries === "in plan" ? [] : [upright])],
      welds: isStated ? [{ uMm: reach, zMm: on, legMm, around: false, bothSides: true, lengthMm: weldMm }] : [],
      heights: [],
    },
  ];
}

const across = (u0Mm: number, u1Mm: number, z0Mm: number, z1Mm: number): PaperRect => ({ u0Mm, u1Mm, z0Mm, z1Mm });

type Meets = Extract<ReturnType<typeof tiePlace>, { readonly meets: unknown }>["meets"][number];

/** What a tie is made to on one side, about the tie itself, and the height of the face its level plate lies on. */
function joined(
  unit: Unit,
  meets: Meets,
  { face, vMm }: FacePlace,
  { half, side }: { readonly half: number; readonly side: 1 | -1 },
): { parts: DetailPart[]; faceMm: number } {
  const { dimensions } = unit;
  const beside = (wideMm: number, z0Mm: number, z1Mm: number): PaperRect =>
    side === 1 ? across(half, half + wideMm, z0Mm, z1Mm) : across(-half - wideMm, -half, z0Mm, z1Mm);
  switch (meets) {
    case "top rail": {
      const head = dimensions.sheetZone(face).v1 + dimensions.topRailDepthMm - vMm;
      return { parts: topRailCut(unit, head, side * (half + dimensions.topRailWidthMm / 2)), faceMm: head };
    }
    case "bottom rail": {
      const atMm = side * (half + dimensions.bottomRailWidthMm / 2);
      const parts = bottomRailCut(unit, -vMm, { atMm, turned: side === -1 });
      return { parts, faceMm: dimensions.baseAboveFittingMm + dimensions.bottomRailDepthMm - vMm };
    }
    case "corner fitting": {
      const { heightMm, widthMm } = dimensions.fitting;
      const foot = vMm < dimensions.heightMm / 2 ? 0 : dimensions.heightMm - heightMm;
      const parts = own(meets, [beside(widthMm, foot - vMm, foot + heightMm - vMm)]);
      return { parts, faceMm: foot + heightMm - vMm };
    }
    case "corner post":
      return { parts: own(meets, [beside(dimensions.frontPostMm.alongWidth, -shownMm, shownMm)]), faceMm: 0 };
  }
}
