import type { Unit } from "../../geometry/building.ts";
import { compassPoint } from "../../marks/compass.ts";
import { moveUnits } from "../move-units.ts";
import { unitsStandingOn } from "../standing-on.ts";
import type { Generator, Trial } from "../trial.ts";

/** The unit pushed back along itself towards the middle of its bearings, with all that stands on it. */
export const shorterOverhang: Generator = ({ scheme, analysis, mark }) => {
  const unit = analysis.structure.building.unitById.get(mark.elements[0] ?? "");
  const run = analysis.run.units.find(({ unitId }) => unitId === unit?.id);
  if (unit === undefined || run === undefined || run.contacts.length === 0) return [];
  const along = run.contacts.map(({ localXMm }) => localXMm);
  const middleMm = along.reduce((sum, xMm) => sum + xMm, 0) / along.length;
  if (Math.abs(middleMm) < STEP_MM) return [];
  const sign = middleMm < 0 ? -1 : 1;
  const [dx, dy] = [sign * unit.frame.cos, sign * unit.frame.sin];
  const towards = compassPoint(dx, dy, analysis.structure.building.northMdeg);
  const moved = [unit.id, ...unitsStandingOn(analysis, unit.id)];
  const most = Math.min(MOST, Math.floor(overhangMm(unit, along, sign) / STEP_MM));
  const trials = Array.from({ length: most }, (_, at): Trial => {
    const byMm = (at + 1) * STEP_MM;
    const shifts = new Map(moved.map((id) => [id, { dxMm: dx * byMm, dyMm: dy * byMm }]));
    return {
      change: { kind: "shorter overhang", unitId: unit.id, byMm, towards },
      operations: moveUnits(scheme, analysis, shifts),
    };
  });
  return trials.length === 0 ? [] : [trials];
};

const STEP_MM = 250;
const MOST = 12;

/** From the corner at the open end to the bearing next to it, mm. */
const overhangMm = ({ dimensions }: Unit, along: readonly number[], sign: number): number =>
  dimensions.holeSpacingLengthwiseMm / 2 + Math.min(...along.map((xMm) => sign * xMm));
