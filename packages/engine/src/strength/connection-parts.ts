import type { Lock, Scheme } from "@cornerway/schema";
import { e70Mpa, steels } from "../catalog/materials.ts";
import { demandAgainst, type Check } from "../checks/check.ts";
import type { CheckBasis } from "../checks/check-basis.ts";
import type { CheckedElement } from "../checks/limit-state.ts";
import type { CombinationLevel } from "../loads/load-combination.ts";
import { bearingForce, type ModelledBearing } from "./modelled-bearings.ts";
import { worstUse } from "./force-part.ts";
import type { SolvedRun } from "./solve-runs.ts";
import type { StrengthBasis } from "./strength-basis.ts";
import type { StrengthPart } from "./strength-part.ts";

/** What a connection carries besides pressing, N. */
type Pull = { readonly tensionN: number; readonly shearN: number };

/**
 * Every connection drawn at a bearing. A stock lock by its rating; a made connection, a hold-down and a seat that holds down
 * and a beam on a container by the weld of the stated detail, common practice, no published source: two plates of 10 mm with 200 mm of 5 mm fillet each.
 */
export function connectionParts(
  bearings: readonly ModelledBearing[],
  scheme: Pick<Scheme, "locks" | "seats">,
  basis: StrengthBasis,
): StrengthPart[] {
  const locks = new Map(scheme.locks.map((lock) => [lock.id, lock]));
  return bearings.flatMap((bearing) => {
    const { heldById } = bearing.planned;
    if (heldById === undefined) return [];
    const lock = locks.get(heldById);
    return lock?.kind === "lock"
      ? [pulledPart(bearing, "lock", "allowable", (pull) => ofLock(lock, pull, basis.allowable))]
      : [pulledPart(bearing, "made connection", "strength", (pull) => ofWeld(pull, lock, basis.factored))];
  });
}

const WELD = { legMm: 5, lengthMm: 400, angleDegree: 0, electrodeMpa: e70Mpa, endLoaded: false, tubeEnd: false };
/** Plate on a fitting; the flange of a bottom rail under a seat. */
const PLATE = { thicknessMm: 10, steel: steels.plate };
const RAIL = { thicknessMm: 4.5, steel: steels.unproved };

function ofWeld(pull: Pull, lock: Lock | undefined, basis: CheckBasis): readonly Check[] {
  const forceN = Math.sqrt(pull.tensionN * pull.tensionN + pull.shearN * pull.shearN);
  const strength = basis.fillet({ ...WELD, thinner: lock === undefined ? RAIL : PLATE });
  return [demandAgainst({ element: "made connection", limitState: "weld" }, forceN, strength)];
}

function ofLock({ tested }: Lock, pull: Pull, basis: CheckBasis): readonly Check[] {
  if (tested === undefined) return basis.lock("twistlock", pull);
  const { source } = tested;
  return basis.lock("twistlock", pull, {
    tension: { resistanceN: tested.tensionN, source },
    shear: { resistanceN: tested.shearN, source },
  });
}

function pulledPart(
  bearing: ModelledBearing,
  element: CheckedElement,
  level: CombinationLevel,
  checksOf: (pull: Pull) => readonly Check[],
): StrengthPart {
  const { ownerId, place } = bearing;
  // every utilisation here grows in proportion to the forces
  const [pulled, slid] = [
    worstUse(checksOf({ tensionN: 1, shearN: 0 })),
    worstUse(checksOf({ tensionN: 0, shearN: 1 })),
  ];
  const weld = element !== "lock";
  const use = ({ tensionN: t, shearN: v }: Pull): number =>
    weld ? pulled * Math.sqrt(t * t + v * v) : pulled * t + slid * v;
  return {
    id: `${ownerId} ${element} ${place}`,
    ownerId,
    element,
    place,
    level,
    use: (solved) => use(pullOn(bearing, solved)),
    decide: (solved) => {
      const pull = pullOn(bearing, solved);
      return {
        limitState: weld ? "weld" : "lock tension",
        utilisation: use(pull),
        checks: () => checksOf(pull),
      };
    },
  };
}

function pullOn(bearing: ModelledBearing, solved: SolvedRun): Pull {
  const [x, y, z] = bearingForce(bearing, solved);
  return { tensionN: Math.max(-z, 0), shearN: Math.sqrt(x * x + y * y) };
}
