import { steels } from "../catalog/materials.ts";
import { containerMembers } from "../catalog/sections/container-members.ts";
import { measuredPressed } from "../catalog/sections/measured-section.ts";
import type { CheckBasis } from "../checks/check-basis.ts";
import type { CheckedMember } from "../checks/checked-member.ts";
import { holdingEnd } from "../checks/holding-end.ts";
import { twistHolds } from "../model/twist-holds.ts";
import type { UnitLines } from "../model/unit-lines.ts";
import { metres } from "./beam-at-opening.ts";
import { demandRoom, DemandsAlong } from "./demands-along.ts";
import { linePlaces } from "./line-places.ts";
import type { MemberStretch } from "./member-part.ts";
import { pressedOf } from "./rail-twist-parts.ts";
import type { SolvedRun } from "./solve-runs.ts";
import type { StrengthPart } from "./strength-part.ts";
import type { UnitBeam } from "./unit-beams.ts";

/** Ends of cross members that keep a rail from turning: their weld, and the web of the rail under it. */
export function holdingEndParts(
  ownerId: string,
  all: readonly UnitBeam[],
  lines: UnitLines,
  forces: MemberStretch["forces"],
  basis: CheckBasis,
  rail: CheckedMember,
): StrengthPart[] {
  const cross = measuredPressed(containerMembers["cross member"], lines.measured?.["cross member"]);
  const { basis: codes } = basis.memberStrengths(rail);
  const ends = twistHolds(lines)
    .flatMap(({ side, holdU, farU, member, farMember }) => [
      { side, member, holdU },
      { side, member: farMember, holdU: farU },
    ])
    .filter(({ member }) => member > 0 && member < lines.floorBays);
  const once = [...new Map(ends.map((end) => [`${end.side} ${end.member}`, end])).values()];
  return once.flatMap(({ side, holdU }): StrengthPart[] => {
    const beam = all.find(({ kind, uMm }) => kind === "cross" && Math.abs(uMm - holdU) < 1);
    if (beam === undefined) return [];
    const linesIn = linePlaces([beam]);
    const along = new DemandsAlong();
    const room = demandRoom();
    const momentIn = (solved: SolvedRun): number => {
      const { values, at } = forces(solved);
      along.take(values, linesIn(at)[0] ?? 0, beam.lengthMm);
      along.write(side === "right" ? 0 : 1, room);
      return room.momentStrongNmm;
    };
    const checksAt = (momentNmm: number, steel = rail.steel) =>
      holdingEnd({ cross, rail: pressedOf(rail), steel }, momentNmm, codes);
    // utilisations grow in proportion to the moment
    return checksAt(MILLION).map((atMillion): StrengthPart => {
      const { element, limitState } = atMillion;
      const use = atMillion.ok ? atMillion.utilisation : Infinity;
      const place = `${limitState === "weld" ? "end" : "web"} ${side} at ${metres(holdU)} m, beside a seat`;
      const useOf = (momentNmm: number): number => (momentNmm === 0 ? 0 : (Math.abs(momentNmm) * use) / MILLION);
      return {
        id: `${ownerId} ${element} ${place}`,
        ...{ ownerId, element, place, level: "strength" },
        use: (solved) => useOf(momentIn(solved)),
        decide: (solved) => {
          const momentNmm = momentIn(solved);
          return {
            limitState,
            utilisation: useOf(momentNmm),
            checks: (steel = steels.unproved) =>
              checksAt(momentNmm, steel).filter((check) => check.limitState === limitState),
          };
        },
      };
    });
  });
}

const MILLION = 1e6;
