import { assumedDoorHeader, bottomSideRail, containerMembers } from "../catalog/sections/container-members.ts";
import { findSection } from "../catalog/sections/find-section.ts";
import { openingFrame } from "../catalog/sections/frame-tubes.ts";
import { measuredPressed, measuredSection } from "../catalog/sections/measured-section.ts";
import type { Section } from "../catalog/sections/section.ts";
import type { Structure } from "../bearing/structure.ts";
import type { Cut } from "../fabric/fabric-of.ts";
import type { Unit } from "../geometry/building.ts";
import { touchMm } from "../geometry/tolerances.ts";
import type { ModelSection } from "./analytical-model.ts";
import { actingCut, endingAtFrames } from "./bare-edges.ts";
import type { BearingPlan } from "./bearing-plan.ts";
import type { UnitPoint } from "./unit-point.ts";
import { measuredSteel, type MeasuredSteel } from "./measured-steel.ts";
import { lineSection, railAtSeat, type ModelAssumptions } from "./model-assumptions.ts";
import type { FrameBar, SheetStiffness, UnitLines, UnitOpening, UnitPost, UnitSeat, WallName } from "./unit-lines.ts";

/** One container of the scheme as lines: its fabric, what stands in its walls and where it bears. */
export function unitLinesOf(
  structure: Structure,
  plan: BearingPlan,
  unit: Unit,
  assumptions: ModelAssumptions,
): UnitLines {
  const { dimensions } = unit;
  const { cuts } = structure.fabric(unit.id);
  const lengthMm = dimensions.holeSpacingLengthwiseMm;
  const measured = measuredSteel(structure.building.overrides, unit.id);
  return {
    lengthMm,
    widthMm: dimensions.holeSpacingCrosswiseMm,
    heightMm: dimensions.heightMm,
    bottomRailMm: assumptions.bottomRailMm,
    topRailMm: dimensions.heightMm - assumptions.topRailBelowTopMm,
    sections: {
      ...assumptions.sections,
      ...(isShort(lengthMm) && assumptions.shortRail),
      ...measuredLines(measured, lengthMm),
    },
    ...(Object.keys(measured).length === 0 ? {} : { measured }),
    floorBays: Math.max(1, Math.round(lengthMm / assumptions.crossMemberSpacingMm)),
    sideSheet: assumptions.sideSheet,
    frontSheet: assumptions.frontSheet,
    doors: weldedShut(unit) ? leaves(assumptions.frontSheet) : null,
    floorShear: assumptions.floorShear,
    roofShear: assumptions.roofShear,
    roofAcross: assumptions.roofAcross,
    openings: endingAtFrames(cuts.flatMap((cut) => openingOf(unit, cut, goneWalls(cuts), assumptions))),
    posts: postsOf(structure, plan, unit, assumptions),
    seats: seatsOf(plan, unit.id),
    ...tiesOf(plan, unit.id),
  };
}

const isShort = (lengthMm: number): boolean => bottomSideRail(lengthMm) !== containerMembers["bottom side rail"];

const lineMembers = (lengthMm: number) =>
  ({
    topRail: ["top side rail", containerMembers["top side rail"]],
    bottomRail: ["bottom side rail", bottomSideRail(lengthMm)],
    crossMember: ["cross member", containerMembers["cross member"]],
    doorHeader: ["door header", assumedDoorHeader],
  }) as const;

/** The lines of members whose thickness was measured. */
function measuredLines(measured: MeasuredSteel, lengthMm: number): Partial<UnitLines["sections"]> {
  const lines = (["topRail", "bottomRail", "crossMember", "doorHeader"] as const).flatMap((line) => {
    const [member, section] = lineMembers(lengthMm)[line];
    const thicknessMm = measured[member];
    if (thicknessMm === undefined) return [];
    return [[line, lineSection(measuredSection(section, thicknessMm))] as const];
  });
  const rail = measured["bottom side rail"];
  const atSeat =
    rail === undefined ? {} : { bottomRailAtSeat: railAtSeat(measuredPressed(bottomSideRail(lengthMm), rail)) };
  return { ...Object.fromEntries(lines), ...atSeat };
}

const weldedShut = ({ container, openings }: Unit): boolean =>
  container.doors === "welded shut" && openings.every(({ face }) => face !== "door");

/** Leaves in their frames, welded at intervals: half as stiff as the sheet of the blind end. Judged, no published source. */
const leaves = ({ shear }: SheetStiffness): SheetStiffness => ({ shear: shear / 2, upright: 0, along: 0 });

/** The section of an added post by its catalogue name; the frame section where the catalogue has none. */
export function postSection(name: string, assumptions: ModelAssumptions): ModelSection {
  const found = findSection(name);
  return found === undefined ? assumptions.sections.frame : lineSection(found);
}

/** Faces whose whole wall is out. */
const goneWalls = (cuts: readonly Cut[]): ReadonlySet<string> =>
  new Set(cuts.filter(({ wallOut }) => wallOut).map(({ opening }) => opening.face));

function openingOf(
  { dimensions }: Unit,
  { opening, rect, members, wallOut }: Cut,
  gone: ReadonlySet<string>,
  { bottomRailMm, topRailBelowTopMm }: Pick<ModelAssumptions, "bottomRailMm" | "topRailBelowTopMm">,
): UnitOpening[] {
  const { face } = opening;
  if (face !== "left" && face !== "right" && face !== "front") return [];
  const wall: WallName = face;
  const sheet = dimensions.sheetZone(wall);
  const outer =
    wall === "front"
      ? dimensions.widthMm - dimensions.holeSpacingCrosswiseMm
      : dimensions.lengthMm - dimensions.holeSpacingLengthwiseMm;
  const length = wall === "front" ? dimensions.holeSpacingCrosswiseMm : dimensions.holeSpacingLengthwiseMm;
  const whole = { u0: 0, u1: length, v0: sheet.v0, v1: sheet.v1 };
  // a cut that reaches a post leaves no sheet beside it: its edge is the post
  const u0 = rect.u0 <= sheet.u0 + touchMm ? 0 : rect.u0 - outer / 2;
  const u1 = rect.u1 >= sheet.u1 - touchMm ? length : rect.u1 - outer / 2;
  // a strip of sheet lower than a fold is wide carries nothing: the opening reaches the rail
  const [toBottom, toTop] = [rect.v0 <= sheet.v0 + LEAST_STRIP_MM, rect.v1 >= sheet.v1 - LEAST_STRIP_MM];
  const v0 = toBottom ? bottomRailMm : rect.v0;
  const v1 = toTop ? dimensions.heightMm - topRailBelowTopMm : rect.v1;
  const acts = opening.framed ? { u0, u1 } : actingCut({ u0, u1 }, length);
  const cut = wallOut ? whole : { ...acts, v0, v1 };
  const { jamb, header, sill } = openingFrame(opening);
  const [bottom, top] =
    wall === "front"
      ? (["bottom end rail", "top end rail"] as const)
      : (["bottom side rail", "top side rail"] as const);
  return [
    {
      wall,
      ...cut,
      // a frame in a wall that is out has no sheet to stand in
      framed: opening.framed && (wallOut || !gone.has(face)),
      fullHeight: wallOut || (toBottom && toTop),
      frame: { jamb: barOf(jamb), header: barOf(header), sill: toBottom ? null : barOf(sill) },
      cutsBottomRail: members.includes(bottom),
      cutsTopRail: members.includes(top),
    },
  ];
}

/** Width of a flat of the side sheet, mm; common practice, no published source. */
const LEAST_STRIP_MM = 72;

const barOf = (section: Section): FrameBar => ({ name: section.name, section: lineSection(section) });

function postsOf({ building }: Structure, plan: BearingPlan, unit: Unit, assumptions: ModelAssumptions): UnitPost[] {
  return (plan.inWalls.get(unit.id) ?? []).map(({ postId, side, u, footed }) => {
    const name = building.postById.get(postId)?.post.section ?? "";
    return { side, u, footed, section: postSection(name, assumptions) };
  });
}

/** Seats this container offers above and needs below, each once, in order along its rails. */
function seatsOf({ bearings }: BearingPlan, unitId: string): UnitSeat[] {
  const points = bearings.flatMap(({ above, below }) => [
    "unitId" in above ? above : null,
    "point" in below ? below.point : null,
  ]);
  const seats = points.flatMap((point) =>
    point !== null && point.unitId === unitId && "seat" in point ? [point.seat] : [],
  );
  return seats.filter((seat, n) => seats.findIndex((other) => sameSeat(other, seat)) === n).sort((a, b) => order(a, b));
}

/** Where ties are made to this container away from its fittings, each place once. */
function tiesOf({ ties }: BearingPlan, unitId: string): Pick<UnitLines, "ties"> {
  const places = ties.flatMap(({ ends }) =>
    ends.flatMap((end) => (end.unitId === unitId && "tied" in end ? [end.tied] : [])),
  );
  const once = new Map(places.map((place) => [JSON.stringify(place), place]));
  return places.length === 0 ? {} : { ties: [...once.values()] };
}

function order(a: UnitSeat, b: UnitSeat): number {
  const name = ({ side, rail }: UnitSeat): string => `${rail} ${side}`;
  return name(a) === name(b) ? a.u - b.u : name(a) < name(b) ? -1 : 1;
}

/** Seats within a millimetre of each other are one. */
export function sameSeat(a: UnitSeat, b: UnitSeat): boolean {
  return a.side === b.side && a.rail === b.rail && Math.abs(a.u - b.u) < 1;
}

/** The seat of the container's lines that a planned point stands for. */
export function seatIn(lines: UnitLines, point: UnitPoint): UnitSeat | null {
  if (!("seat" in point)) return null;
  return lines.seats.find((seat) => sameSeat(seat, point.seat)) ?? point.seat;
}
