import { steels, type Steel } from "../catalog/materials.ts";
import type { Check } from "../checks/check.ts";
import type { CheckBasis } from "../checks/check-basis.ts";
import { RecentlyMade } from "../numerics/recently-made.ts";
import type { SolvedRun } from "./solve-runs.ts";
import type { StrengthPart } from "./strength-part.ts";

/** The force a part is pressed with in a run, N; 0 where it is not pressed. */
type ForceOf = (solved: SolvedRun) => number;

/** All that the checks of a part hang on beside the force and the steel: the codes, and plain data. */
type Alike = { readonly basis: CheckBasis; readonly by: unknown };

/**
 * A part under one force whose utilisations all grow in proportion to it, so one working at a kilonewton screens every
 * run. `alike`: parts of which it is the same share that working.
 */
export function forcePart(
  named: Omit<StrengthPart, "id" | "use" | "decide">,
  forceOf: ForceOf,
  checksAt: (forceN: number, steel: Steel) => readonly Check[],
  alike?: Alike,
): StrengthPart {
  const make = (): Check | undefined => worstOf(checksAt(KILONEWTON, steels.unproved));
  const worst = alike === undefined ? make() : worstKnown(alike, make);
  return {
    id: `${named.ownerId} ${named.element} ${named.place}`,
    ...named,
    use: (solved) => useOf(forceOf(solved)),
    decide: (solved) => {
      const forceN = forceOf(solved);
      return {
        limitState: worst?.limitState ?? "compression",
        utilisation: useOf(forceN),
        forceN,
        checks: (steel = steels.unproved) => checksAt(forceN, steel),
      };
    },
  };

  function useOf(forceN: number): number {
    if (forceN <= 0 || worst === undefined) return 0;
    return worst.ok ? (worst.utilisation * forceN) / KILONEWTON : Infinity;
  }
}

const KILONEWTON = 1000;

/** Found once, also from one edit to the next. */
function worstKnown({ basis, by }: Alike, make: () => Check | undefined): Check | undefined {
  const known = found.get(basis) ?? new RecentlyMade<Check | undefined>(WORST_KEPT);
  found.set(basis, known);
  return known.take(JSON.stringify(by), make);
}

const found = new WeakMap<CheckBasis, RecentlyMade<Check | undefined>>();
/** Seats at as many distances from the ends of rails. */
const WORST_KEPT = 256;

/** Greatest utilisation of these checks; infinite where one is refused. */
export const worstUse = (checks: readonly Check[]): number =>
  checks.reduce((most, check) => Math.max(most, check.ok ? check.utilisation : Infinity), 0);

function worstOf(checks: readonly Check[]): Check | undefined {
  const use = (check: Check): number => (check.ok ? check.utilisation : Infinity);
  return checks.reduce<Check | undefined>(
    (worst, next) => (worst === undefined || use(next) > use(worst) ? next : worst),
    undefined,
  );
}
