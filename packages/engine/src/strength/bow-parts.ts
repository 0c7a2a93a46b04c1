import type { CheckBasis } from "../checks/check-basis.ts";
import type { CheckedElement } from "../checks/limit-state.ts";
import { linePlaces } from "./line-places.ts";
import type { MemberStretch } from "./member-part.ts";
import type { LineForces, SolvedRun } from "./solve-runs.ts";
import type { StrengthPart } from "./strength-part.ts";

/** A member that bows between what holds it, its softer way, and its lines in the model. */
export type Bowing = {
  readonly element: CheckedElement;
  readonly inertiaMm4: number;
  readonly lengthMm: number;
  readonly beams: readonly { readonly id: string }[];
};

/** A stretch of a member both ways: by its strong axis over its length, by its weak one between what holds it across. */
export function bowingOf({ member, beams }: Pick<MemberStretch, "member" | "beams">): Bowing[] {
  const { element, section, lengths } = member;
  const [strong, weak] = section.kind === "angle" ? [section.iMm4, section.iMm4] : [section.ixMm4, section.iyMm4];
  return [
    { element, inertiaMm4: strong, lengthMm: lengths.strongMm, beams },
    { element, inertiaMm4: weak, lengthMm: lengths.weakMm, beams },
  ];
}

/**
 * One part for each kind of member of an owner: the one that enlarges its own bow most. Beyond half as much again factors on
 * first-order forces are no answer, whatever the strength says.
 */
export function bowParts(
  ownerId: string,
  members: readonly Bowing[],
  forces: (solved: SolvedRun) => LineForces,
  basis: CheckBasis,
): StrengthPart[] {
  const kinds = [...new Set(members.map(({ element }) => element))];
  return kinds.map((element) => {
    const own = members.filter((member) => member.element === element);
    return bowPart(ownerId, element, own, forces, basis);
  });
}

function bowPart(
  ownerId: string,
  element: CheckedElement,
  members: readonly Bowing[],
  forces: (solved: SolvedRun) => LineForces,
  basis: CheckBasis,
): StrengthPart {
  const place = "own bow";
  const perNewton = members.map(({ inertiaMm4, lengthMm }) => 1 / basis.mostBowedN({ inertiaMm4, lengthMm }));
  const linesIn = members.map(({ beams }) => linePlaces(beams));
  /** The greatest compression in a member, N. */
  const pressedIn = (n: number, { values, at }: LineForces): number => {
    const lines = linesIn[n]?.(at) ?? NONE;
    let most = 0;
    for (let b = 0; b < lines.length; b++) {
      const from = lines[b] ?? 0;
      most = Math.max(most, values[from] ?? 0, -(values[from + FAR_END] ?? 0));
    }
    return most;
  };
  const useIn = (solved: SolvedRun): number => {
    const inner = forces(solved);
    let most = 0;
    for (let n = 0; n < members.length; n++) most = Math.max(most, pressedIn(n, inner) * (perNewton[n] ?? 0));
    return most;
  };
  const worstOf = (solved: SolvedRun): { use: number; n: number; axialN: number } => {
    const inner = forces(solved);
    return members.reduce(
      (worst, _, n) => {
        const axialN = pressedIn(n, inner);
        const use = axialN * (perNewton[n] ?? 0);
        return use > worst.use ? { use, n, axialN } : worst;
      },
      { use: 0, n: 0, axialN: 0 },
    );
  };
  return {
    id: `${ownerId} ${element} ${place}`,
    ownerId,
    element,
    place,
    level: "strength",
    use: useIn,
    decide: (solved) => {
      const { use, n, axialN } = worstOf(solved);
      const { inertiaMm4 = 1, lengthMm = 1 } = members[n] ?? {};
      return {
        limitState: "amplification",
        utilisation: use,
        checks: () => [basis.bow(element, { inertiaMm4, lengthMm, axialN })],
      };
    },
  };
}

const NONE = new Int32Array(0);
/** Of the nine forces of a line: the axial one at its second end. */
const FAR_END = 6;
