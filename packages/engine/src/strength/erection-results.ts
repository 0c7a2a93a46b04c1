import type { Scheme } from "@cornerway/schema";
import { checkOf, type Check } from "../checks/check.ts";
import type { Analysis } from "../load-path/analysis.ts";
import { storeysOf } from "../geometry/storeys.ts";
import { buildingFrame } from "../loads/building-frame.ts";
import { deadCase } from "../loads/dead-cases.ts";
import { combinationText, type LoadCombination } from "../loads/load-combination.ts";
import { windLoading } from "../loads/site-actions.ts";
import type { SiteHazards } from "../loads/site-hazards.ts";
import { bareStability } from "../loads/stability/bare-stability.ts";
import type { ElementResult } from "./element-result.ts";
import { statedResult } from "./stated-result.ts";
import type { Working } from "../working/working.ts";
import type { StrengthBasis } from "./strength-basis.ts";

/** Part of the design wind speed while a building is set up in less than six weeks: ASCE 37-14 6.2.1, from memory. */
const SPEED_WHILE_SET_UP = 0.75;

/**
 * Every unit as it has just been set, bare, on what stands by then, storey by storey in the order of the scheme: turning over,
 * sliding and lifting off in the wind of the time of erection. A unit with connections drawn at two of its bearings or more is
 * held from the start. Nothing where the project has no hazards.
 */
export function erectionResults(
  scheme: Scheme,
  { bearings }: Pick<Analysis, "bearings">,
  { loads }: StrengthBasis,
): ElementResult[] {
  const { hazards } = scheme.basis;
  if (hazards === null) return [];
  const held = new Set(
    bearings
      .filter(({ contacts }) => contacts.filter(({ heldById }) => heldById !== undefined).length >= 2)
      .map(({ unitId }) => unitId),
  );
  const order = storeysOf(scheme).flatMap(({ containerIds }) => containerIds);
  const present = new Set(["D", "W"] as const);
  const combinations = loads
    .combinations({ level: "strength", present, halfCompanionLive: false, overstrength: false })
    .map(inErection);
  return order.flatMap((unitId, at) => {
    if (held.has(unitId)) return [];
    const standing = schemeOf(scheme, new Set(order.slice(0, at + 1)));
    return justSet(standing, unitId, `stage ${at + 1} of ${order.length}`, combinations, hazards, loads);
  });
}

function justSet(
  standing: Scheme,
  unitId: string,
  stage: string,
  combinations: readonly LoadCombination[],
  hazards: SiteHazards,
  loads: StrengthBasis["loads"],
): ElementResult[] {
  const building = buildingFrame(standing);
  if (building === undefined) throw new RangeError(`${stage} sets no unit`);
  const { cases } = windLoading(standing, building, hazards, loads, [unitId]);
  const found = bareStability(building, deadCase(standing, "bare"), cases, combinations, standing.basis.friction, [
    unitId,
  ]);
  const [worst] = found.toSorted((a, b) => useOf(b.working) - useOf(a.working));
  if (worst === undefined) return [];
  const { mode, caseId, combinationId, working } = worst;
  const subject = { element: "building", limitState: "stability while set up" } as const;
  const check: Check =
    working.utilisation === undefined
      ? { ok: false, ...subject, why: "nothing resists it" }
      : checkOf(subject, working);
  return [
    statedResult(
      { ownerId: unitId, place: `just set, ${mode}`, run: `${stage}, ${combinationId}: D bare, ${caseId}` },
      check,
    ),
  ];
}

/** Where nothing resists there is no number: worse than all that stands, and told where no number says that it does not. */
const useOf = ({ utilisation }: Working): number => utilisation ?? 1;

const inErection = (combination: LoadCombination): LoadCombination => ({
  ...combination,
  id: `${combinationText(combination)}, wind while set up`,
  terms: combination.terms.map((term) =>
    term.symbol === "W" ? { ...term, factor: SPEED_WHILE_SET_UP * SPEED_WHILE_SET_UP * term.factor } : term,
  ),
});

const schemeOf = (scheme: Scheme, unitIds: ReadonlySet<string>): Scheme => ({
  ...scheme,
  containers: scheme.containers.filter(({ id }) => unitIds.has(id)),
  openings: scheme.openings.filter(({ containerId }) => unitIds.has(containerId)),
  loads: scheme.loads.filter(({ containerId }) => unitIds.has(containerId)),
  freeLoads: scheme.freeLoads.filter(({ containerId }) => unitIds.has(containerId)),
});
