import type { Structure } from "../bearing/structure.ts";
import { unitsNear, type Unit } from "../geometry/building.ts";
import { faceFrame, pointOnFace } from "../geometry/face-frame.ts";
import { planRect } from "../geometry/plan-rect.ts";
import type { Cut } from "../fabric/fabric-of.ts";

/** Whether a wall taken out gives onto a wall taken out of the unit beside it. */
export function joinsAnother(structure: Structure, unit: Unit, cut: Cut): boolean {
  const x = unit.dimensions.lengthMm / 2 + mostGapMm;
  const y = unit.dimensions.widthMm / 2 + mostGapMm;
  const around = planRect(unit.frame, -x, x, -y, y);
  return unitsNear(structure.building, around).some(
    (other) =>
      other.id !== unit.id &&
      structure.fabric(other.id).cuts.some((theirs) => theirs.wallOut && faceEachOther(unit, cut, other, theirs)),
  );
}

/** Units side by side are no further apart than this, mm. Common practice, no published source. */
const mostGapMm = 300;

function faceEachOther(unit: Unit, cut: Cut, other: Unit, theirs: Cut): boolean {
  const own = faceFrame(unit, cut.opening.face);
  const facing = faceFrame(other, theirs.opening.face);
  if (own.normal.xMm * facing.normal.xMm + own.normal.yMm * facing.normal.yMm > -0.999) return false;
  const from = pointOnFace(own, (cut.rect.u0 + cut.rect.u1) / 2, (cut.rect.v0 + cut.rect.v1) / 2);
  const to = pointOnFace(facing, (theirs.rect.u0 + theirs.rect.u1) / 2, (theirs.rect.v0 + theirs.rect.v1) / 2);
  const dx = to.xMm - from.xMm;
  const dy = to.yMm - from.yMm;
  const gapMm = dx * own.normal.xMm + dy * own.normal.yMm;
  const sidewaysMm = Math.abs(dx * own.u.xMm + dy * own.u.yMm);
  return (
    gapMm > -1 &&
    gapMm <= mostGapMm &&
    sidewaysMm < (cut.rect.u1 - cut.rect.u0 + theirs.rect.u1 - theirs.rect.u0) / 2 &&
    Math.abs(to.zMm - from.zMm) < (cut.rect.v1 - cut.rect.v0 + theirs.rect.v1 - theirs.rect.v0) / 2
  );
}
