import { checkBasisOf } from "../../../src/checks/check-basis.ts";
import { statedTieChecks, type TieForce } from "../../../src/checks/stated-tie.ts";
import { steels } from "../../../src/catalog/materials.ts";
import { boltTensionBesideShear } from "../../../src/codes/steel/bolt-together.ts";

const lrfd = checkBasisOf("IBC 2021", "LRFD");
const newtonsPerKip = 4448.222;

/** What a ¾ in A325-N bolt still takes in tension beside a shear, LRFD, both kips. */
export function tensionBesideShearKip(shearKip: number): number {
  const bolt = { grade: "A325-N", diameterMm: 19.05 } as const;
  const strength = boltTensionBesideShear(bolt, shearKip * newtonsPerKip, { edition: "2016", method: "LRFD" });
  return strength.ok ? strength.available / newtonsPerKip : Number.NaN;
}

/** Pull of one ¾ in bolt, 41.4 mm from the web and 76 mm from the next, that 10 mm of A36 takes without prying, LRFD, N. */
export function pullWithoutPryingN(): number {
  const plate = { steel: steels.plate, thicknessMm: 10, boltMm: 19.05, toFaceMm: 41.4, tributaryMm: 76 };
  const strength = lrfd.joints.pullWithoutPrying(plate);
  return strength.ok ? strength.available : Number.NaN;
}

/** The greatest utilisation of one limit state of the stated tie under this force, LRFD. */
export const tieUse = (force: Partial<TieForce>, limitState: string): number =>
  Math.max(
    ...statedTieChecks({ acrossN: 0, levelN: 0, uprightN: 0, ...force }, lrfd).map((check) =>
      check.ok && check.limitState === limitState ? check.utilisation : 0,
    ),
  );

/** Floor boards over 308 mm, LRFD: utilisation. */
export function boardUse(pressurePa: number, pointN: number): number {
  const check = lrfd.floorBoards({ pressurePa, pointN, meaning: "a load", spanMm: 308 });
  return check.ok ? check.utilisation : Number.NaN;
}
