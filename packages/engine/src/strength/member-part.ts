import { steels, type Steel } from "../catalog/materials.ts";
import type { CheckBasis } from "../checks/check-basis.ts";
import type { CheckedMember } from "../checks/checked-member.ts";
import { bowLimits, enlargement, type BowLimits } from "./bowed-demand.ts";
import { demandRoom, DemandsAlong, type DemandRoom } from "./demands-along.ts";
import { linePlaces } from "./line-places.ts";
import { MemberBound } from "./member-bound.ts";
import type { LineForces, SolvedRun } from "./solve-runs.ts";
import type { StrengthPart } from "./strength-part.ts";

/** A stretch of a member: the lines of the model it is made of, all with the same strengths. */
export type MemberStretch = {
  readonly ownerId: string;
  readonly place: string;
  readonly member: CheckedMember;
  /** What its numbers rest on: of a rail across an opening that is not framed. */
  readonly said?: string;
  readonly beams: readonly { readonly id: string; readonly lengthMm: number }[];
  /** Where its forces are found in a solved run. */
  readonly forces: (solved: SolvedRun) => LineForces;
};

/** A member by its code: strengths once, then every place of every line in every run. */
export function memberPart(stretch: MemberStretch, basis: CheckBasis): StrengthPart {
  const { ownerId, place, member, beams, forces, said } = stretch;
  const { element } = member;
  const capacities = basis.capacities(basis.memberStrengths(member));
  const limits = bowLimits(member);
  const linesIn = linePlaces(beams);
  const along = new DemandsAlong();
  const room = demandRoom();
  const lengthsMm = Float64Array.from(beams, ({ lengthMm }) => lengthMm);
  const bound = new MemberBound(capacities, limits);
  /** The greatest use of any place, or `above` where none is greater; written to `worst` where that is asked for. */
  const mostIn = (solved: SolvedRun, above: number, worst?: DemandRoom): number => {
    const { values, at } = forces(solved);
    const lines = linesIn(at);
    let most = above;
    for (
      let b = bound.next(0, lines, lengthsMm, values, most);
      b < lines.length;
      b = bound.next(b + 1, lines, lengthsMm, values, most)
    ) {
      along.take(values, lines[b] ?? 0, lengthsMm[b] ?? 0);
      for (let n = 0; n < along.count; n++) {
        along.write(n, room);
        bow(room, limits);
        const use = basis.memberUse(capacities, room);
        if (use <= most) continue;
        most = use;
        if (worst !== undefined) Object.assign(worst, room);
      }
    }
    return most;
  };
  return {
    id: `${ownerId} ${element} ${place}`,
    ownerId,
    element,
    place,
    ...(said !== undefined && { said }),
    level: "strength",
    use: (solved, above = 0) => mostIn(solved, above),
    decide: (solved) => {
      const worst = demandRoom();
      mostIn(solved, 0, worst);
      return {
        ...basis.memberUtilisation(capacities, worst),
        checks: (steel = member.steel) => basis.memberChecks(basis.memberStrengths({ ...member, steel }), worst),
      };
    },
  };
}

/** Enlarges moments by the member's own bow; a thousandth of a newton, or a newton-millimetre, is rounding and no force. */
function bow(room: DemandRoom, { strongN, weakN }: BowLimits): void {
  room.axialN = thousandths(room.axialN);
  room.shearStrongN = thousandths(room.shearStrongN);
  room.shearWeakN = thousandths(room.shearWeakN);
  room.momentStrongNmm = Math.round(room.momentStrongNmm) * enlargement(room.axialN, strongN) + 0;
  room.momentWeakNmm = Math.round(room.momentWeakNmm) * enlargement(room.axialN, weakN) + 0;
  room.torsionNmm = Math.round(room.torsionNmm) + 0;
}

const thousandths = (value: number): number => Math.round(value * 1e3) / 1e3 + 0;

/** Container steel has no record until one is attached; added steel is what it is bought as. */
export const steelOf = (added: boolean): Steel => (added ? steels.tube : steels.unproved);
