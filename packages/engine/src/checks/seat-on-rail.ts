import type { Steel } from "../catalog/materials.ts";
import type { CorrugatedSheet } from "../catalog/sections/corrugated-sheet.ts";
import type { PressedSection, TubeSection } from "../catalog/sections/section.ts";
import { thinBendingWithCrippling } from "../codes/cold-formed/combined-forces.ts";
import { bearingStiffener, type WebStiffener } from "../codes/cold-formed/bearing-stiffener.ts";
import { assumedInsideRadiusMm, pressedWebCrippling, type CripplingCase } from "../codes/cold-formed/web-crippling.ts";
import { sideWallCrippling, sideWallYielding, type SideWallForce } from "../codes/steel/tube-wall.ts";
import type { Resistance } from "../working/resistance.ts";
import { checkOf, demandAgainst, type Check } from "./check.ts";
import type { CodeBasis } from "./code-basis.ts";
import { localRailMoment, railAtSeat } from "./rail-at-seat.ts";

/** A force of a seat, post or crossing rail on a rail, N, over a length along it, mm; `seatMm` is that of a seat that is drawn there. */
export type SeatForce = {
  readonly forceN: number;
  readonly bearingMm: number;
  readonly toEndMm: number;
  readonly seatMm?: number;
};

/** Bottom rail or sill pressed at one place, with its sheet whole there. `bending` is its strength with nothing to twist it. */
export type PressedRail = {
  readonly element: "bottom side rail" | "sill";
  readonly section: PressedSection;
  readonly steel: Steel;
  readonly sheet: CorrugatedSheet;
  readonly where: CripplingCase;
  /** A plate between its flanges where it is pressed. */
  readonly stiffener?: WebStiffener;
  readonly bending: Resistance;
};

/**
 * A seat on a pressed rail: web crippling, the local moment, and both together. A stiffener takes the force past the web, which
 * then neither cripples nor has it combined with bending.
 */
export function seatOnPressedRail(rail: PressedRail, seat: SeatForce, basis: CodeBasis): readonly Check[] {
  const { element, section, steel, where, bending, stiffener } = rail;
  const local = { element, railIMm4: section.ixMm4, sheet: rail.sheet, ...localForce(seat) };
  if (stiffener !== undefined) {
    const stiffened = bearingStiffener({ section, steel, stiffener }, basis.thin);
    return [
      demandAgainst({ element, limitState: "web crippling" }, seat.forceN, stiffened),
      railAtSeat(local, bending),
    ];
  }
  const insideRadiusMm = assumedInsideRadiusMm(section.thicknessMm);
  const crippling = pressedWebCrippling(
    { section, steel, where, bearingMm: seat.bearingMm, insideRadiusMm },
    basis.thin,
  );
  return [
    demandAgainst({ element, limitState: "web crippling" }, seat.forceN, crippling),
    railAtSeat(local, bending),
    together(rail, seat, crippling, localRailMoment(local).result.value, basis),
  ];
}

const localForce = ({ forceN, seatMm }: SeatForce) => ({ forceN, ...(seatMm !== undefined && { seatMm }) });

function together(
  { element, bending }: PressedRail,
  seat: SeatForce,
  crippling: Resistance,
  momentNmm: number,
  basis: CodeBasis,
): Check {
  const subject = { element, limitState: "bending with web crippling" } as const;
  if (!crippling.ok) return { ok: false, ...subject, why: crippling.why };
  if (!bending.ok) return { ok: false, ...subject, why: bending.why };
  const required = { momentNmm, forceN: seat.forceN };
  const nominal = { momentNmm: bending.nominal, forceN: crippling.nominal };
  return checkOf(subject, thinBendingWithCrippling(required, nominal, basis.thin));
}

/** Top rail or header pressed at one place across its whole width. `useOfFace` as for a chord's face in compression. */
export type TubeRail = {
  readonly element: "top side rail" | "front header";
  readonly section: TubeSection;
  readonly steel: Steel;
  readonly sheet: CorrugatedSheet;
  readonly useOfFace: number;
  readonly bending: Resistance;
};

/** A seat on a tube rail: side walls yielding and crippling, and the local moment. */
export function seatOnTubeRail(rail: TubeRail, seat: SeatForce, basis: CodeBasis): readonly Check[] {
  const { element, section, steel, useOfFace, bending } = rail;
  const chord = { section, steel, useOfFace };
  const force: SideWallForce = seat;
  return [
    demandAgainst(
      { element, limitState: "side wall yielding" },
      seat.forceN,
      sideWallYielding(chord, force, basis.steel),
    ),
    demandAgainst(
      { element, limitState: "side wall crippling" },
      seat.forceN,
      sideWallCrippling(chord, force, basis.steel),
    ),
    railAtSeat({ element, railIMm4: section.ixMm4, sheet: rail.sheet, ...localForce(seat) }, bending),
  ];
}
