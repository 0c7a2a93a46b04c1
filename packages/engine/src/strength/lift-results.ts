import type { Container, Scheme } from "@cornerway/schema";
import { isoProofLoad } from "../checks/iso-proof-load.ts";
import { inOrder } from "../geometry/in-order.ts";
import { analyse } from "../load-path/analysis.ts";
import { lifting } from "../loads/lifting.ts";
import type { LoadCombination } from "../loads/load-combination.ts";
import { buildModel, type BuiltModel } from "../model/build-model.ts";
import { usualAssumptions } from "../model/model-assumptions.ts";
import { SOLUTION_ACCURACY } from "../numerics/tolerances.ts";
import type { AssumptionSet } from "./assumption-sets.ts";
import { elementResult, type ElementResult } from "./element-result.ts";
import { modelledBearings } from "./modelled-bearings.ts";
import { screen, type PartWorst } from "./screen.ts";
import { solveBuilt, type StrengthMemory } from "./solve-runs.ts";
import { liftedAlike } from "./lifted-alike.ts";
import { statedResult } from "./stated-result.ts";
import type { StrengthBasis } from "./strength-basis.ts";
import type { StrengthRun } from "./run-plan.ts";
import { unitPartsAlone } from "./unit-parts-alone.ts";

/**
 * Every container as it hangs, with what is cut before the pick: the part that is used most, every part beyond its strength,
 * and the fittings it hangs from. 1.4 times the weight with its dynamic factor, as for dead load alone: common practice, no
 * published source.
 */
export const liftResults = (scheme: Scheme, basis: StrengthBasis, memory: StrengthMemory): ElementResult[] =>
  scheme.containers.flatMap((container) => liftOf(scheme, container, basis, memory));

/** The same of one container of the scheme. */
export function liftOf(
  scheme: Scheme,
  container: Container,
  basis: StrengthBasis,
  memory: StrengthMemory,
): ElementResult[] {
  return [...liftedParts(scheme, container, basis, memory), ...liftedFittings(scheme, container, basis)];
}

/** What is checked inside it: a solution of its own. Alike containers are hung once. */
export const liftedParts = (
  scheme: Scheme,
  container: Container,
  basis: StrengthBasis,
  memory: StrengthMemory,
): ElementResult[] =>
  liftedAlike(scheme, container, basis, memory, (alone, hanging) => {
    const { parts, falls } = hung(alone, hanging, basis, memory);
    const results = parts.toSorted((a, b) => useOf(b) - useOf(a));
    return [...falls, ...results.filter((result, n) => n === 0 || useOf(result) > 1)];
  });

const useOf = ({ utilisation = Infinity }: ElementResult): number => utilisation;

const DEAD_ALONE = 1.4;

/** What its parts take in the picks in which it holds together, and that it does not in others: nothing is known of it there. */
type Hung = { readonly parts: readonly ElementResult[]; readonly falls: readonly ElementResult[] };

function hung(alone: Scheme, container: Container, basis: StrengthBasis, memory: StrengthMemory): Hung {
  const { cases } = lifting(alone, container);
  const analysis = analyse(inOrder(alone));
  const built = freelyHeld(buildModel(analysis, cases, {}, usualAssumptions));
  const runs = cases.map(({ id }): StrengthRun => ({
    id,
    combination: lifted,
    level: "strength",
    factors: { [id]: DEAD_ALONE },
  }));
  const bearings = modelledBearings(built, analysis.structure.building);
  const { solved, refused } = solveBuilt(built, bearings, runs, lift, memory);
  // what is lifted is the engineer's in any case: what of it is sure is not told apart
  const parts = unitPartsAlone(analysis, built, container.id, basis).filter(({ sureOf }) => sureOf === undefined);
  // nothing is there that could hold what moves
  const worsts = screen(
    parts,
    solved.filter(({ held }) => held.length === 0),
  );
  const most = Math.max(...worsts.map(useIn));
  // workings are long: of what is neither the worst nor too much none is asked for
  return {
    parts: worsts
      .filter((worst) => useIn(worst) >= Math.min(1, most) * (1 - SOLUTION_ACCURACY))
      .map((worst) => hanging(elementResult(worst))),
    falls: refused.slice(0, 1).map(({ run }) => withoutEquilibrium(container.id, run.id)),
  };
}

/** As it is cut it comes apart or folds up once it hangs. */
const withoutEquilibrium = (ownerId: string, run: string): ElementResult =>
  statedResult(
    { ownerId, place: "hanging, lifted", run },
    { ok: false, element: "building", limitState: "stability while set up", why: "nothing resists it" },
  );

const useIn = ({ asDrawn, heldDown }: PartWorst): number => (asDrawn ?? heldDown)?.use ?? 0;

const lift: AssumptionSet = { id: "locks at play", solves: "every run", assumptions: usualAssumptions };
const lifted: LoadCombination = {
  id: "lift",
  level: "strength",
  terms: [{ symbol: "D", factor: DEAD_ALONE }],
  clause: {
    document: "Lifting",
    edition: "",
    place: "common practice, no published source",
    certainty: "common practice",
  },
};

/** A lift has a plan of its own: what it asks too much of is the engineer's, and no fault of the building. */
const hanging = (result: ElementResult): ElementResult => ({
  ...result,
  id: `${result.id}, lifted`,
  place: `${result.place}, lifted`,
  covered: "bounded",
  coveredWhy:
    "on two diagonal fittings unless rigging equalises; cuts after placing, braces or such rigging would relieve it",
});

/** Legs and weight balance, so three supports that neither lift nor press keep it in place without holding anything. */
function freelyHeld(built: BuiltModel): BuiltModel {
  const supports = built.model.supports.slice(0, 3).map((support) => ({ ...support, compression_only: false }));
  return { ...built, model: { ...built.model, supports } };
}

/** The fittings it hangs from. */
export function liftedFittings(scheme: Scheme, container: Container, { factored }: StrengthBasis): ElementResult[] {
  return lifting(scheme, container).fittingForces.map((force) => {
    const check = factored.cornerFitting("tension", DEAD_ALONE * force.result.value, isoProofLoad({ edition: "1990" }));
    return statedResult({ ownerId: container.id, place: `lifted, ${force.title}`, run: "1.4 of the pick" }, check);
  });
}
