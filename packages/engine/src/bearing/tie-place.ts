import type { FactOf, Face, PointMm, Tie } from "@cornerway/schema";
import { jointTolerances } from "../catalog/joint-tolerances.ts";
import { openingRect } from "../fabric/opening-rect.ts";
import type { Building, Unit } from "../geometry/building.ts";
import { toLocal } from "../geometry/place.ts";
import { overlapDepthMm } from "../geometry/plan-rect.ts";
import { touchMm } from "../geometry/tolerances.ts";

type Meets = FactOf<"tie-joins">["meets"][number];

/** A tie where it is drawn: the gap it bridges with what it meets on either unit, or why it does not serve. */
export type TiePlace = {
  readonly tie: Tie;
  readonly at: PointMm;
  /** From the tie to the farther of the two units, in plan, mm. */
  readonly awayMm: number;
} & (
  | {
      readonly gapMm: number;
      readonly meets: [Meets, Meets];
      /** The nearest point of the walls of its `a` and of its `b`. */
      readonly on: readonly [FacePlace, FacePlace];
    }
  | { readonly why: FactOf<"tie-cannot-serve">["why"] }
);

/** A place on a wall of a unit: along the face from its front end or right side, up from the underside, mm. */
export type FacePlace = {
  readonly face: Exclude<Face, "roof" | "floor">;
  readonly uMm: number;
  readonly vMm: number;
  readonly awayMm: number;
};

/** A tie held against the two units it is to join. */
export function tiePlace({ unitById }: Building, tie: Tie): TiePlace {
  const at = { xMm: tie.xUm / 1000, yMm: tie.yUm / 1000, zMm: tie.zUm / 1000 };
  const a = unitById.get(tie.aId);
  const b = unitById.get(tie.bId);
  if (a === undefined || b === undefined) throw new RangeError(`tie ${tie.id} names a container that is not there`);
  const onA = nearestPlace(a, at);
  const onB = nearestPlace(b, at);
  const awayMm = Math.max(onA.awayMm, onB.awayMm);
  const place = { tie, at, awayMm };
  if (!sideBySide(a, b, at)) return { ...place, why: "not side by side" };
  if (awayMm > jointTolerances.tieReach.value) return { ...place, why: "out of reach" };
  const meets = [metBy(a, onA), metBy(b, onB)] as const;
  if (meets.includes("opening")) return { ...place, why: "in an opening" };
  const [first, second] = meets;
  if (first === "opening" || first === "sheet" || second === "opening" || second === "sheet")
    return { ...place, why: "on sheet" };
  return { ...place, gapMm: onA.awayMm + onB.awayMm, meets: [first, second], on: [onA, onB] };
}

/** Beside each other at the height of the tie: neither over nor in the other. */
function sideBySide(a: Unit, b: Unit, { zMm }: PointMm): boolean {
  const spans = ({ baseZMm, topZMm }: Unit) => zMm >= baseZMm - touchMm && zMm <= topZMm + touchMm;
  return spans(a) && spans(b) && overlapDepthMm(a.outline, b.outline) <= touchMm;
}

/** The nearest point of a unit's walls: face, along it and up, and how far it is in plan, mm. */
function nearestPlace({ frame, dimensions, baseZMm }: Unit, at: PointMm): FacePlace {
  const { xMm, yMm } = toLocal(frame, at);
  const x = dimensions.lengthMm / 2;
  const y = dimensions.widthMm / 2;
  const pastX = Math.abs(xMm) - x;
  const pastY = Math.abs(yMm) - y;
  const awayMm = Math.sqrt(Math.max(0, pastX) * Math.max(0, pastX) + Math.max(0, pastY) * Math.max(0, pastY));
  const vMm = at.zMm - baseZMm;
  if (pastY >= pastX) return { face: yMm > 0 ? "left" : "right", uMm: Math.max(-x, Math.min(x, xMm)) + x, vMm, awayMm };
  return { face: xMm > 0 ? "door" : "front", uMm: Math.max(-y, Math.min(y, yMm)) + y, vMm, awayMm };
}

function metBy(unit: Unit, { face, uMm, vMm }: FacePlace): Meets | "sheet" | "opening" {
  const { dimensions, openings } = unit;
  const isCut = openings.some((opening) => {
    const { u0, u1, v0, v1 } = openingRect(opening);
    return opening.face === face && u0 < uMm && uMm < u1 && v0 < vMm && vMm < v1;
  });
  if (isCut) return "opening";
  const whole = dimensions.face(face);
  const sheet = dimensions.sheetZone(face);
  const { lengthMm, widthMm, heightMm } = dimensions.fitting;
  const fromEnd = Math.min(uMm, whole.u1 - uMm);
  const fromTopOrBottom = Math.min(vMm, whole.v1 - vMm);
  if (fromTopOrBottom <= heightMm && fromEnd <= (face === "left" || face === "right" ? lengthMm : widthMm))
    return "corner fitting";
  if (uMm <= sheet.u0 || uMm >= sheet.u1) return "corner post";
  if (vMm >= sheet.v1) return "top rail";
  return vMm <= sheet.v0 ? "bottom rail" : "sheet";
}
