import { steels, type Steel } from "../catalog/materials.ts";
import type { Check } from "../checks/check.ts";
import type { CheckBasis } from "../checks/check-basis.ts";
import type { CheckedMember } from "../checks/checked-member.ts";
import { coverageOf } from "../checks/coverage.ts";
import type { MemberDemand } from "../checks/member-demand.ts";
import { statesOfMembers } from "../checks/limit-state.ts";
import type { Capacities, Deciding } from "../checks/member-utilisation.ts";
import { bowLimits, enlargement, type BowLimits } from "./bowed-demand.ts";
import { demandRoom, DemandsAlong, type DemandRoom } from "./demands-along.ts";
import { linePlaces } from "./line-places.ts";
import { MemberBound } from "./member-bound.ts";
import type { LineForces, SolvedRun } from "./solve-runs.ts";
import type { StrengthPart } from "./strength-part.ts";
import { surePart } from "./sure-part.ts";

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
export const memberPart = (stretch: MemberStretch, basis: CheckBasis): StrengthPart =>
  placeByPlace(stretch, basis, everyState(stretch, basis));

/** The same by what is sure of it, where it has limit states that are only bounded, or strengths that are refused. */
export function sureMemberPart(stretch: MemberStretch, basis: CheckBasis): StrengthPart[] {
  const { member } = stretch;
  const coverages = statesOfMembers.map((limitState) => coverageOf(limitState, member.element));
  const checked = new Set(
    coverages.flatMap(({ limitState, coverage }) => (coverage === "checked" ? [limitState] : [])),
  );
  const capacities = basis.capacities(basis.memberStrengths(member));
  const stated = Object.values(capacities).every((one) => one !== undefined);
  if (stated && coverages.every(({ coverage }) => coverage === "checked" || coverage === "does not arise")) return [];
  // a strength that is not looked at stops no line from being passed over
  const bounding = checked.has("torsion") ? capacities : { ...capacities, torsion: Infinity };
  const judging: Judging = {
    bounding,
    use: (demand) => basis.utilisationAmong(checked, capacities, demand).utilisation,
    decide: (demand) => basis.utilisationAmong(checked, capacities, demand),
    isJudged: ({ ok, limitState }) => ok && checked.has(limitState),
  };
  return [surePart(placeByPlace(stretch, basis, judging), "what is checked")];
}

/** By which limit states a member is judged. */
type Judging = {
  /** Strengths by which lines are passed over. */
  readonly bounding: Capacities;
  readonly use: (demand: MemberDemand) => number;
  readonly decide: (demand: MemberDemand) => Deciding;
  readonly isJudged: (check: Check) => boolean;
};

function everyState({ member }: MemberStretch, basis: CheckBasis): Judging {
  const capacities = basis.capacities(basis.memberStrengths(member));
  return {
    bounding: capacities,
    use: (demand) => basis.memberUse(capacities, demand),
    decide: (demand) => basis.memberUtilisation(capacities, demand),
    isJudged: () => true,
  };
}

function placeByPlace(stretch: MemberStretch, basis: CheckBasis, judging: Judging): StrengthPart {
  const { ownerId, place, member, beams, forces, said } = stretch;
  const { element } = member;
  const limits = bowLimits(member);
  const linesIn = linePlaces(beams);
  const along = new DemandsAlong();
  const room = demandRoom();
  const lengthsMm = Float64Array.from(beams, ({ lengthMm }) => lengthMm);
  const bound = new MemberBound(judging.bounding, limits);
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
        const use = judging.use(room);
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
        ...judging.decide(worst),
        checks: (steel = member.steel) =>
          basis.memberChecks(basis.memberStrengths({ ...member, steel }), worst).filter(judging.isJudged),
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
