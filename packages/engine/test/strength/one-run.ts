import type { Scheme } from "@cornerway/schema";
import { checkBasisOf } from "../../src/checks/check-basis.ts";
import { designBasisFor } from "../../src/codes/loads/design-basis-for.ts";
import { inOrder } from "../../src/geometry/in-order.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import type { ActionCase } from "../../src/loads/action-case.ts";
import { assumptionSets, type AssumptionSet } from "../../src/strength/assumption-sets.ts";
import { checkedParts } from "../../src/strength/checked-parts.ts";
import { governingOf, screen, type PartWorst } from "../../src/strength/screen.ts";
import { strengthMemory } from "../../src/strength/strength-memory.ts";
import { solveRuns, type SolvedRun, type SolvedSet } from "../../src/strength/solve-runs.ts";
import type { StrengthBasis } from "../../src/strength/strength-basis.ts";
import type { StrengthRun } from "../../src/strength/run-plan.ts";

export const basis: StrengthBasis = {
  loads: designBasisFor("IBC 2021"),
  factored: checkBasisOf("IBC 2021", "LRFD"),
  allowable: checkBasisOf("IBC 2021", "ASD"),
};

/** One run of cases each taken once, at one level, under the first set of assumptions unless told. */
export function oneRun(
  scheme: Scheme,
  cases: readonly ActionCase[],
  { level = "strength", set = firstSet() }: { level?: StrengthRun["level"]; set?: AssumptionSet } = {},
): { readonly set: SolvedSet; readonly solved: SolvedRun; readonly worsts: readonly PartWorst[] } {
  const analysis = analyse(inOrder(scheme));
  const combination = {
    id: "one",
    level,
    terms: [],
    clause: { document: "", edition: "", place: "", certainty: "derived" as const },
  };
  const run: StrengthRun = {
    id: "one",
    level,
    combination,
    factors: Object.fromEntries(cases.map(({ id }) => [id, 1])),
  };
  const answer = solveRuns(analysis, cases, [run], set, strengthMemory());
  const [solved] = answer.solved;
  if (solved === undefined) throw new Error(`no equilibrium: ${answer.refused[0]?.refusal.refused}`);
  const parts = checkedParts(
    analysis,
    answer.built,
    { ...scheme, basis: { ...scheme.basis, soil: { class: "sand" } } },
    basis,
  );
  return { set: answer, solved, worsts: screen(parts, [solved]) };
}

/** Greatest utilisation of the parts whose name holds this text. */
export function useOf(worsts: readonly PartWorst[], text: string): number {
  const found = worsts.filter(({ part }) => part.id.includes(text));
  if (found.length === 0)
    throw new Error(`no part "${text}"; there are ${worsts.map(({ part }) => part.id).join(", ")}`);
  return Math.max(...found.map((worst) => governingOf(worst).use));
}

export function firstSet(): AssumptionSet {
  const [first] = assumptionSets;
  if (first === undefined) throw new Error("there is a first set");
  return first;
}

/** Own weight of every unit, N. */
export const ownWeight = (scheme: Scheme, weightN: number): ActionCase => ({
  id: "own",
  symbol: "D",
  loads: scheme.containers.map(({ id }) => ({ kind: "own weight", containerId: id, weightN })),
});

/** Pressure over the whole floor (or roof) of every unit, Pa. */
export const pressed = (scheme: Scheme, pressurePa: number, surface: "floor" | "roof" = "floor"): ActionCase => ({
  id: `${surface} load`,
  symbol: "L",
  loads: scheme.containers.map(({ id, type }) => ({
    kind: "on",
    containerId: id,
    surface,
    patch: {
      rect: { u0: 0, u1: type === "1AAA" ? 12_192 : 6058, v0: 0, v1: 2438 },
      pressurePa,
      alongUPaPerMm: 0,
      alongVPaPerMm: 0,
    },
  })),
});

/** Nine forces of each line of a container, local axes: three forces and three moments at its first end, three forces at its second. */
export function lineForces(solved: SolvedRun, set: SolvedSet, unitId: string): [string, number[]][] {
  const { values, at } = solved.inner(unitId);
  const unit = set.built.model.units.find(({ id }) => id === unitId);
  return (unit?.fragment.beams ?? []).map(({ id }) => [id, [...values.slice(at(id), at(id) + 9)]]);
}
