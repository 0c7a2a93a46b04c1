import { bottomSideRail, containerMembers } from "../catalog/sections/container-members.ts";
import { measuredPressed, measuredTube } from "../catalog/sections/measured-section.ts";
import { corrugatedSheet, folds } from "../catalog/sections/corrugated-sheet.ts";
import type { PressedSection, TubeSection } from "../catalog/sections/section.ts";
import { steels, type Steel } from "../catalog/materials.ts";
import type { CheckBasis } from "../checks/check-basis.ts";
import type { Check } from "../checks/check.ts";
import type { CheckedElement } from "../checks/limit-state.ts";
import { isoProofLoad } from "../checks/iso-proof-load.ts";
import type { Building } from "../geometry/building.ts";
import type { BearingPlan } from "../model/bearing-plan.ts";
import type { UnitPoint } from "../model/unit-point.ts";
import { measuredSteel } from "../model/measured-steel.ts";
import type { EndName, SideName } from "../model/unit-lines.ts";
import { bearingForce, placeOf, type ModelledBearing } from "./modelled-bearings.ts";
import { seatAt, type DrawnSeat } from "./drawn-seat.ts";
import { forcePart } from "./force-part.ts";
import type { StrengthPart } from "./strength-part.ts";

/** Along the rail where no seat is drawn: common practice, no published source. */
export const SEAT_MM = 100;
/** A fitting across, ISO 1161, from memory. */
const FITTING_MM = 162;
/** A post is right below a seat where its axis is this near to the middle of it, mm. */
const UNDER_MM = 1;
/** Share of the loaded face already used by the rail's own forces; assumed, no published source. */
const FACE_USED = 0.5;

/** What presses on each fitting and on each rail at a bearing: on the unit above and on the one below. */
export function bearingParts(
  bearings: readonly ModelledBearing[],
  building: Building,
  basis: CheckBasis,
  inWalls: BearingPlan["inWalls"] = new Map(),
): StrengthPart[] {
  return bearings.flatMap((bearing) => {
    const { above, below } = bearing.planned;
    const points = ["unitId" in above ? above : undefined, "point" in below ? below.point : undefined];
    return points.flatMap((point) => (point === undefined ? [] : partsAt(point, bearing, building, basis, inWalls)));
  });
}

function partsAt(
  point: UnitPoint,
  bearing: ModelledBearing,
  building: Building,
  basis: CheckBasis,
  inWalls: BearingPlan["inWalls"],
): StrengthPart[] {
  /** `by`: all that the checks hang on beside the element. */
  const part = (
    element: CheckedElement,
    by: unknown,
    checksAt: (forceN: number, steel: Steel) => readonly Check[],
  ): StrengthPart =>
    forcePart(
      {
        ownerId: point.unitId,
        element,
        place: `at ${placeOf(point)}, ${bearing.ownerId} ${bearing.place} on it`,
        level: "strength",
      },
      (solved) => bearingForce(bearing, solved)[2],
      checksAt,
      { basis, by: [element, by] },
    );
  if ("corner" in point)
    return [
      part("corner fitting", "ISO 1161", (forceN) => [
        basis.cornerFitting("compression", forceN, isoProofLoad({ edition: "1990" })),
      ]),
    ];
  const lengthMm = building.unitById.get(point.unitId)?.dimensions.holeSpacingLengthwiseMm ?? 0;
  const measured = measuredSteel(building.overrides, point.unitId);
  const { rail, side, u } = point.seat;
  const seat = seatAt(bearing, point, building);
  const toEndMm = Math.min(u, lengthMm - u);
  if (rail === "bottom") {
    const section = measuredPressed(bottomSideRail(lengthMm), measured["bottom side rail"]);
    return [
      part("bottom side rail", [section, toEndMm, seat], (forceN, steel) =>
        onBottomRail(section, { forceN, toEndMm, ...seat }, steel, basis),
      ),
    ];
  }
  if (side === "door") return [part("door header", "refused", () => [doorHeaderRefused])];
  const element = side === "front" ? "front header" : "top side rail";
  const section = measuredTube(
    containerMembers[element],
    measured[side === "front" ? "top end rail" : "top side rail"],
  );
  const seated = part(element, [section, toEndMm, seat], (forceN, steel) =>
    onTopRail(element, section, { forceN, toEndMm, ...seat }, steel, basis),
  );
  // a post right below takes what comes down: the rail is pressed onto its head, the sheet beside it is not
  if (inWalls.get(point.unitId)?.some((post) => post.side === side && Math.abs(post.u - u) < UNDER_MM)) return [seated];
  const bearingMm = seat.seatMm ?? ("corner" in bearing.planned.above ? FITTING_MM : SEAT_MM);
  const cut = cutBelow(point.unitId, side, u, building);
  return [
    seated,
    part(side === "front" ? "end sheet" : "side sheet", [side, cut, bearingMm], (forceN, steel) =>
      cut ? [sheetCutBelow(side)] : crushed(side, forceN, bearingMm, steel, basis),
    ),
  ];
}

/** Whether an opening lies below a seat, or within its spread to mid height on either side. */
function cutBelow(unitId: string, side: EndName | SideName, uMm: number, { unitById }: Building): boolean {
  const unit = unitById.get(unitId);
  if (unit === undefined) return false;
  const { lengthMm, widthMm, holeSpacingLengthwiseMm, holeSpacingCrosswiseMm } = unit.dimensions;
  const outer = side === "front" ? widthMm - holeSpacingCrosswiseMm : lengthMm - holeSpacingLengthwiseMm;
  const at = uMm + outer / 2;
  return unit.openings.some(
    ({ face, offsetUm, widthUm }) =>
      face === side && at > offsetUm / 1000 - SPREAD_MM && at < (offsetUm + widthUm) / 1000 + SPREAD_MM,
  );
}

const SPREAD_MM = 300;

const sheetCutBelow = (side: string): Check => ({
  ok: false,
  element: side === "front" ? "end sheet" : "side sheet",
  limitState: "sheet crushing under a seat",
  why: "shape not covered by this check",
});

const doorHeaderRefused: Check = {
  ok: false,
  element: "door header",
  limitState: "local moment at a seat",
  why: "shape not covered by this check",
};

const sideSheet = corrugatedSheet(folds.side, 1.6);
const endSheet = corrugatedSheet(folds.end, 2);

type Pressing = DrawnSeat & { readonly forceN: number; readonly toEndMm: number };

function onBottomRail(
  section: PressedSection,
  { stiffenerMm, ...force }: Pressing,
  steel: Steel,
  basis: CheckBasis,
): readonly Check[] {
  const held = { strongMm: 300, weakMm: 300, twistMm: 300 };
  const member = { element: "bottom side rail", section, steel, lengths: held, unbracedMm: 0, cb: 1 } as const;
  const bending = basis.memberStrengths(member).headPressed;
  const stiffener = stiffenerMm === undefined ? {} : { stiffener: { thicknessMm: stiffenerMm, steel: steels.plate } };
  const rail = { element: "bottom side rail", section, steel, sheet: sideSheet, bending, ...stiffener } as const;
  return basis.seatOnPressedRail(
    { ...rail, where: "inside, one flange" },
    { bearingMm: force.seatMm ?? SEAT_MM, ...force },
  );
}

function onTopRail(
  element: "top side rail" | "front header",
  section: TubeSection,
  force: Pressing,
  steel: Steel,
  basis: CheckBasis,
): readonly Check[] {
  const held = { strongMm: 300, weakMm: 300, twistMm: 300 };
  const bending = basis.memberStrengths({ element, section, steel, lengths: held, unbracedMm: 0, cb: 1 }).headPressed;
  const sheet = element === "front header" ? endSheet : sideSheet;
  return basis.seatOnTubeRail(
    { element, section, steel, sheet, useOfFace: FACE_USED, bending },
    { bearingMm: force.seatMm ?? SEAT_MM, ...force },
  );
}

/** The sheet is whole below the seat. */
function crushed(side: string, forceN: number, bearingMm: number, steel: Steel, basis: CheckBasis): readonly Check[] {
  const front = side === "front";
  return [
    basis.sheetCrushing({
      element: front ? "end sheet" : "side sheet",
      sheet: front ? endSheet : sideSheet,
      steel,
      railIMm4: containerMembers["top side rail"].ixMm4,
      heightMm: SHEET_HEIGHT_MM,
      bearingMm,
      forceN,
    }),
  ];
}

/** Of a high-cube between its rails; lower sheets are stronger. */
const SHEET_HEIGHT_MM = 2766;
