import type { PressedSection } from "../catalog/sections/section.ts";
import type { CheckBasis } from "../checks/check-basis.ts";
import type { CheckedMember } from "../checks/checked-member.ts";
import type { MemberDemand } from "../checks/member-demand.ts";
import { warpedRail, warpedUse, type TwistedRail } from "../checks/rail-twist.ts";
import { inSpaceOf, twistHolds, type TwistHold } from "../model/twist-holds.ts";
import type { UnitLines } from "../model/unit-lines.ts";
import { metres } from "./beam-at-opening.ts";
import { bowLimits, enlargement } from "./bowed-demand.ts";
import { demandRoom, DemandsAlong } from "./demands-along.ts";
import { linePlaces } from "./line-places.ts";
import type { MemberStretch } from "./member-part.ts";
import type { SolvedRun } from "./solve-runs.ts";
import type { StrengthPart } from "./strength-part.ts";
import type { UnitBeam } from "./unit-beams.ts";

/** Length along the rail over which what stands under it at a place is welded to it, mm. */
export type SeatLength = (side: "left" | "right", uMm: number) => number;

/** Of a rail's lower face above the underside of the fittings, mm; ISO 1496-1, from memory. */
const BASE_MM = 12.5;

type Seated = Pick<MemberStretch, "ownerId" | "place" | "member" | "forces"> & { readonly beams: readonly UnitBeam[] };

/** Whether a line is a bottom rail's between the cross members on either side of a seat. */
export function isBesideSeat(lines: UnitLines): (beam: UnitBeam) => boolean {
  const holds = twistHolds(lines);
  return ({ kind, side, uMm }) => kind === "bottomRail" && holds.some((hold) => inSpaceOf(hold, side, uMm));
}

/** A bottom rail beside its seats: as any member but for torsion, which it carries by warping. */
export const besideSeatParts = (
  stretch: Seated,
  lines: UnitLines,
  lengthOf: SeatLength,
  basis: CheckBasis,
): StrengthPart[] =>
  twistHolds(lines).flatMap((hold) => {
    const beams = stretch.beams.filter(({ kind, side, uMm }) => kind === "bottomRail" && inSpaceOf(hold, side, uMm));
    return beams.length === 0 ? [] : [besideSeat({ ...stretch, beams }, hold, lines, lengthOf, basis)];
  });

function besideSeat(
  { ownerId, place, member, forces, beams }: Seated,
  hold: TwistHold,
  lines: UnitLines,
  lengthOf: SeatLength,
  basis: CheckBasis,
): StrengthPart {
  const strengths = basis.memberStrengths(member);
  const capacities = basis.capacities(strengths);
  const plateMm = lengthOf(hold.side, hold.seatU) / 2;
  const rail = twistedRail(member, hold, lines, plateMm);
  const warped = warpedUse(rail, member.steel, strengths.basis);
  const useOf = (demand: MemberDemand): number =>
    Math.max(warped(demand), basis.memberUse(capacities, untwisted(demand)));
  const worstIn = worstBesideSeat(beams, hold.seatU - lines.lengthMm / 2, plateMm, member, useOf);
  const named = `${place} beside what it stands on at ${metres(hold.seatU)} m`;
  return {
    id: `${ownerId} ${member.element} ${named}`,
    ...{ ownerId, element: member.element, place: named, level: "strength" },
    use: (solved) => useOf(worstIn(solved, forces)),
    decide: (solved) => {
      const demand = worstIn(solved, forces);
      const bent = basis.memberUtilisation(capacities, untwisted(demand));
      const twisted = { limitState: "torsion with other forces", utilisation: warped(demand) } as const;
      return {
        ...(twisted.utilisation > bent.utilisation ? twisted : bent),
        checks: (steel = member.steel) => [
          ...basis.memberChecks(basis.memberStrengths({ ...member, steel }), untwisted(demand)),
          warpedRail(rail, steel, demand, strengths.basis),
        ],
      };
    },
  };
}

const untwisted = (demand: MemberDemand): MemberDemand => ({ ...demand, torsionNmm: 0 });

function twistedRail(member: CheckedMember, hold: TwistHold, lines: UnitLines, plateMm: number): TwistedRail {
  const left = (u: number): number => Math.max(Math.abs(hold.seatU - u) - plateMm, 0);
  const [nearMm, farMm] = [left(hold.holdU), left(hold.farU)];
  return { section: pressedOf(member), nearMm, farMm, lineMm: lines.bottomRailMm, baseMm: BASE_MM };
}

/**
 * The worst end of these lines, with the couple of the seat: what goes to either side of it together. Over its plate a seat
 * carries what bends the rail across, which is there what it is at the plate's end. What even loads add between the ends of lines
 * so short is not looked for.
 */
function worstBesideSeat(
  beams: readonly UnitBeam[],
  seatX: number,
  plateMm: number,
  member: CheckedMember,
  useOf: (demand: MemberDemand) => number,
) {
  const limits = bowLimits(member);
  const linesIn = linePlaces(beams);
  const along = new DemandsAlong();
  const [room, atPlateEnd] = [demandRoom(), demandRoom()];
  return (solved: SolvedRun, forces: MemberStretch["forces"]): MemberDemand => {
    const { values, at } = forces(solved);
    const starts = linesIn(at);
    const greatest = (side: -1 | 1): number =>
      beams.reduce((most, { from, to }, b) => {
        const isThere = side * ((from[0] + to[0]) / 2 - seatX) > 0;
        return isThere ? Math.max(most, Math.abs(values[(starts[b] ?? 0) + 3] ?? 0)) : most;
      }, 0);
    const torsionNmm = greatest(-1) + greatest(1);
    let worst: MemberDemand = demandRoom();
    beams.forEach(({ lengthMm, from, to }, b) => {
      along.take(values, starts[b] ?? 0, lengthMm);
      [from, to].forEach(([x], end) => {
        along.writeAt(end * lengthMm, room);
        const underPlateMm = plateMm - Math.abs(x - seatX);
        if (underPlateMm > 0) {
          const away = Math.min(underPlateMm, lengthMm);
          along.writeAt(end === 0 ? away : lengthMm - away, atPlateEnd);
          room.momentWeakNmm = atPlateEnd.momentWeakNmm;
        }
        room.torsionNmm = torsionNmm;
        room.momentStrongNmm *= enlargement(room.axialN, limits.strongN);
        room.momentWeakNmm *= enlargement(room.axialN, limits.weakN);
        if (useOf(room) > useOf(worst)) worst = { ...room };
      });
    });
    return worst;
  };
}

export function pressedOf({ section }: CheckedMember): PressedSection {
  if (section.kind !== "pressed") throw new RangeError("a bottom rail is pressed");
  return section;
}
