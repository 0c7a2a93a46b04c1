import { e70Mpa, steels, type Steel } from "../catalog/materials.ts";
import { statedTie } from "../catalog/stated-tie.ts";
import { openWorking } from "../working/open-working.ts";
import type { Working } from "../working/working.ts";
import { demandAgainst, type Check, type Subject } from "./check.ts";
import type { CheckBasis } from "./check-basis.ts";

/** What a tie carries, N: across the gap, pressing positive, and along it, level and upright. */
export type TieForce = { readonly acrossN: number; readonly levelN: number; readonly uprightN: number };

/** The rail a tie is welded to: the thinnest of the generic specification, the top side rail, mm. */
const RAIL_MM = 3;
/** Its welds let a plate turn at both ends. */
const PINNED = 1;

const subject = (limitState: Subject["limitState"]): Subject => ({ element: "tie", limitState });
const steel = steels.plate;
const grossMm2 = statedTie.widthMm * statedTie.thicknessMm;
const leverMm = statedTie.lengthMm / 2;

/**
 * The limit states of a tie as the stated plate: a level one that is pressed or pulled across the gap and sheared along it, and
 * where it carries upright force an upright one beside it. Each bends in its own plane between its welds; the moment is
 * nothing in the middle of the gap. `rail`: the steel they are welded to.
 */
export function statedTieChecks(
  { acrossN, levelN, uprightN }: TieForce,
  basis: CheckBasis,
  rail: Steel = steels.unproved,
): readonly Check[] {
  return [
    axialCheck(acrossN, basis),
    ...[levelN, uprightN].flatMap((shearN, n) =>
      shearN === 0 ? [] : shearedChecks(shearN, n === 0 ? acrossN : 0, basis, rail),
    ),
    ...(levelN === 0 ? [weldCheck(0, acrossN, basis, rail)] : []),
  ];
}

/** The greatest of their utilisations as a plain number, for running through combinations. */
export function statedTieUse(basis: CheckBasis): (force: TieForce) => number {
  const one = (force: Partial<TieForce>, among: (check: Check) => boolean): number =>
    statedTieChecks({ acrossN: 0, levelN: 0, uprightN: 0, ...force }, basis)
      .filter(among)
      .reduce((most, check) => Math.max(most, check.ok ? check.utilisation : Infinity), 0);
  const isWeld = ({ limitState }: Check): boolean => limitState === "weld";
  const isPlate = (check: Check): boolean => !isWeld(check);
  const [pressed, pulled] = [one({ acrossN: 1 }, isPlate), one({ acrossN: -1 }, isPlate)];
  const sheared = one({ levelN: 1 }, isPlate);
  // F² = (N + αV)² + (βV)²: α and β from three of its values
  const [ofN, ofV, ofBoth] = [
    one({ acrossN: 1 }, isWeld),
    one({ levelN: 1 }, isWeld),
    one({ acrossN: 1, levelN: 1 }, isWeld),
  ];
  const alpha = ((ofBoth * ofBoth - ofV * ofV) / (ofN * ofN) - 1) / 2;
  const beta2 = (ofV * ofV) / (ofN * ofN) - alpha * alpha;
  const welds = (n: number, v: number): number => {
    const x = n + alpha * v;
    return ofN * Math.sqrt(x * x + beta2 * v * v);
  };
  return ({ acrossN, levelN, uprightN }) =>
    Math.max(
      acrossN > 0 ? pressed * acrossN : -pulled * acrossN,
      sheared * Math.max(levelN, uprightN),
      welds(Math.abs(acrossN), levelN),
      welds(0, uprightN),
    );
}

function axialCheck(acrossN: number, { joints }: CheckBasis): Check {
  const { widthMm, thicknessMm, lengthMm } = statedTie;
  if (acrossN <= 0)
    return demandAgainst(
      subject("tension"),
      acrossN,
      joints.tensionYielding({ steel, grossMm2, effectiveNetMm2: grossMm2 }),
    );
  const plate = { steel, widthMm, thicknessMm, effectiveLengthMm: PINNED * lengthMm };
  return demandAgainst(subject("compression"), acrossN, joints.plateCompression(plate));
}

function shearedChecks(shearN: number, acrossN: number, basis: CheckBasis, rail: Steel): Check[] {
  const { joints } = basis;
  const { widthMm: depthMm, thicknessMm, lengthMm: unbracedMm } = statedTie;
  return [
    demandAgainst(subject("shear"), shearN, joints.plateShearYielding(steel, grossMm2)),
    demandAgainst(subject("shear"), shearN, joints.plateShearRupture(steel, grossMm2)),
    demandAgainst(
      subject("plate bending"),
      shearN * leverMm,
      joints.flatPlateFlexure({ steel, depthMm, thicknessMm, unbracedMm }),
    ),
    weldCheck(shearN, acrossN, basis, rail),
  ];
}

function weldCheck(shearN: number, acrossN: number, basis: CheckBasis, rail: Steel): Check {
  const strength = basis.fillet({
    legMm: statedTie.legMm,
    lengthMm: 2 * statedTie.weldMm,
    angleDegree: 0,
    electrodeMpa: e70Mpa,
    thinner: { thicknessMm: RAIL_MM, steel: rail },
    endLoaded: false,
    tubeEnd: false,
  });
  return demandAgainst(subject("weld"), evenForce(shearN, acrossN), strength);
}

/**
 * What a weld of the same length would have to carry evenly to be as hard pressed as the two lines of one end at their
 * farthest points, N. Elastic method for groups of welds, AISC Manual Part 8, from memory.
 */
function evenForce(shearN: number, acrossN: number): Working {
  const clause = {
    document: "AISC Manual",
    edition: "15th",
    place: "Part 8, elastic method",
    certainty: "memory",
  } as const;
  const working = openWorking("Welds of a tie at one end", clause);
  working.let("V", Math.abs(shearN), "N", "along the gap", "derived", "analysis");
  working.let("N", Math.abs(acrossN), "N", "across the gap", "derived", "analysis");
  working.let("l", statedTie.weldMm, "mm", "each of two lines, across the gap", "common practice");
  working.let("b", statedTie.widthMm, "mm", "between them", "common practice");
  working.let("e", leverMm, "mm", "middle of the gap to the middle of the welds", "common practice");
  working.compute("I_p", "2*(l^3/12 + l*(b/2)^2)", "mm³", "per mm of throat");
  working.compute("q_x", "N/(2*l) + V*e*(b/2)/I_p", "N/mm");
  working.compute("q_y", "V/(2*l) + V*e*(l/2)/I_p", "N/mm");
  working.compute("F", "2*l*sqrt(q_x^2 + q_y^2)", "N");
  return working.giving("F");
}
