import type { PlanModel, PlanUnit } from "@cornerway/engine";
import type { Mark, PointMm, Verdict } from "@cornerway/schema";
import { project, type ViewPoint } from "../view-transform.ts";

/** A bearing off the corners, hatched in plan along the unit that comes down there. */
export type PlanHatch = { key: string; markId: string; verdict: Verdict; outline: readonly ViewPoint[] };

const halfAcrossMm = 260;
const halfAlongMm = 700;

/** Bearings of the units on or over this storey that a mark speaks of. */
export function planHatches(marks: readonly Mark[], model: PlanModel): PlanHatch[] {
  const shown = [...model.units, ...model.overhead];
  return marks
    .filter(({ verdict }) => verdict !== "works as built" && verdict !== "not checked")
    .flatMap((mark) => {
      const unit = shown.find(({ container }) => container.id === mark.elements[0]);
      if (unit === undefined) return [];
      return placesOf(mark).map((at, index) => ({
        key: `${mark.id}-${index}`,
        markId: mark.id,
        verdict: mark.verdict,
        outline: bandAt(at, unit),
      }));
    });
}

function placesOf({ fact, at }: Mark): PointMm[] {
  if (fact.kind === "borne-on-rail") return fact.crossings.map((crossing) => crossing.at);
  return fact.kind === "overhang" ||
    fact.kind === "corner-on-air" ||
    fact.kind === "made-connection" ||
    fact.kind === "rocks"
    ? [at]
    : [];
}

/** A band across the unit's own direction, under its rail. */
function bandAt(at: PointMm, { placed }: PlanUnit): ViewPoint[] {
  const { uMm, vMm } = project("plan", at);
  const { cos, sin } = placed.frame;
  const corner = (along: number, across: number): ViewPoint => ({
    uMm: uMm + along * cos - across * sin,
    vMm: vMm + along * sin + across * cos,
  });
  return [
    corner(-halfAcrossMm, -halfAlongMm),
    corner(halfAcrossMm, -halfAlongMm),
    corner(halfAcrossMm, halfAlongMm),
    corner(-halfAcrossMm, halfAlongMm),
  ];
}
