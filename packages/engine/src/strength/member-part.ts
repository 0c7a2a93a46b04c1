import { steels, type Steel } from "../catalog/materials.ts";
import type { CheckBasis } from "../checks/check-basis.ts";
import type { CheckedMember } from "../checks/checked-member.ts";
import type { MemberDemand } from "../checks/member-demand.ts";
import { bowedDemand } from "./bowed-demand.ts";
import { demandsAlong } from "./demands-along.ts";
import type { SolvedRun } from "./solve-runs.ts";
import { worseOf, type Screened, type StrengthPart } from "./strength-part.ts";

/** A stretch of a member: the lines of the model it is made of, all with the same strengths. */
export type MemberStretch = {
  readonly ownerId: string;
  readonly place: string;
  readonly member: CheckedMember;
  readonly beams: readonly { readonly id: string; readonly lengthMm: number }[];
  /** Where its end forces are found in a solved run. */
  readonly forces: (solved: SolvedRun) => Readonly<Record<string, readonly number[]>>;
};

/** A member by its code: strengths once, then every place of every line in every run. */
export function memberPart({ ownerId, place, member, beams, forces }: MemberStretch, basis: CheckBasis): StrengthPart {
  const { element } = member;
  const capacities = basis.capacities(basis.memberStrengths(member));
  const screenOne = (demand: MemberDemand): Screened => ({
    ...basis.memberUtilisation(capacities, demand),
    checks: (steel = member.steel) => basis.memberChecks(basis.memberStrengths({ ...member, steel }), demand),
  });
  return {
    id: `${ownerId} ${element} ${place}`,
    ownerId,
    element,
    place,
    level: "strength",
    screen: (solved) => {
      const found = forces(solved);
      let worst: Screened | undefined;
      for (const { id, lengthMm } of beams)
        for (const demand of demandsAlong(found[id] ?? [], lengthMm))
          worst = worseOf(worst, screenOne(bowedDemand(rounded(demand), member)));
      return worst;
    },
  };
}

/** A thousandth of a newton, or a newton-millimetre, is rounding of the solution and no force. */
const rounded = (demand: MemberDemand): MemberDemand => ({
  axialN: Math.round(demand.axialN * 1e3) / 1e3 + 0,
  shearStrongN: Math.round(demand.shearStrongN * 1e3) / 1e3 + 0,
  shearWeakN: Math.round(demand.shearWeakN * 1e3) / 1e3 + 0,
  momentStrongNmm: Math.round(demand.momentStrongNmm) + 0,
  momentWeakNmm: Math.round(demand.momentWeakNmm) + 0,
  torsionNmm: Math.round(demand.torsionNmm) + 0,
});

/** Container steel has no record until one is attached; added steel is what it is bought as. */
export const steelOf = (added: boolean): Steel => (added ? steels.tube : steels.unproved);
