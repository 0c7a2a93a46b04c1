import { steels, type Steel } from "../catalog/materials.ts";
import type { CheckBasis } from "../checks/check-basis.ts";
import type { CheckedMember } from "../checks/checked-member.ts";
import { bowLimits, enlargement, type BowLimits } from "./bowed-demand.ts";
import { demandRoom, eachDemand, type DemandRoom } from "./demands-along.ts";
import type { LineForces, SolvedRun } from "./solve-runs.ts";
import type { StrengthPart } from "./strength-part.ts";

/** A stretch of a member: the lines of the model it is made of, all with the same strengths. */
export type MemberStretch = {
  readonly ownerId: string;
  readonly place: string;
  readonly member: CheckedMember;
  readonly beams: readonly { readonly id: string; readonly lengthMm: number }[];
  /** Where its forces are found in a solved run. */
  readonly forces: (solved: SolvedRun) => LineForces;
};

/** A member by its code: strengths once, then every place of every line in every run. */
export function memberPart({ ownerId, place, member, beams, forces }: MemberStretch, basis: CheckBasis): StrengthPart {
  const { element } = member;
  const capacities = basis.capacities(basis.memberStrengths(member));
  const limits = bowLimits(member);
  const room = demandRoom();
  const eachBowed = (solved: SolvedRun, visit: () => void): void => {
    const { values, at } = forces(solved);
    for (const { id, lengthMm } of beams)
      eachDemand(values, at(id), lengthMm, room, () => {
        bow(room, limits);
        visit();
      });
  };
  return {
    id: `${ownerId} ${element} ${place}`,
    ownerId,
    element,
    place,
    level: "strength",
    use: (solved) => {
      let most = 0;
      eachBowed(solved, () => (most = Math.max(most, basis.memberUse(capacities, room))));
      return most;
    },
    decide: (solved) => {
      let worst = { use: -1, demand: { ...room } };
      eachBowed(solved, () => {
        const use = basis.memberUse(capacities, room);
        if (use > worst.use) worst = { use, demand: { ...room } };
      });
      return {
        ...basis.memberUtilisation(capacities, worst.demand),
        checks: (steel = member.steel) => basis.memberChecks(basis.memberStrengths({ ...member, steel }), worst.demand),
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
