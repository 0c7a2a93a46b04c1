import type { Scheme } from "@cornerway/schema";
import type { Unit } from "../geometry/building.ts";
import type { Analysis } from "../load-path/analysis.ts";
import type { PlannedBearing } from "../model/bearing-plan.ts";
import type { BuiltModel } from "../model/build-model.ts";
import { checkedParts, partsInside } from "../strength/checked-parts.ts";
import type { PartsMade } from "../strength/parts-made.ts";
import type { StrengthBasis } from "../strength/strength-basis.ts";
import type { StrengthPart } from "../strength/strength-part.ts";
import { touches } from "./touches.ts";

/** A unit, and others whose insides are checked with it. */
export type TriedUnits = { readonly unit: Unit; readonly besides: readonly string[] };

/**
 * Everything that is checked of one unit and at its bearings, of the pads that carry it alone, and inside those besides. `made` has
 * what was checked where an opening was tried before: most of it stays.
 */
export function triedParts(
  analysis: Analysis,
  built: BuiltModel,
  { unit, besides }: TriedUnits,
  scheme: Scheme,
  basis: StrengthBasis,
  made: PartsMade,
): StrengthPart[] {
  const { model, plan, notes } = built;
  const { structure } = analysis;
  const isOwn = (planned: PlannedBearing): boolean => touches({ planned }, unit.id);
  const linked = plan.bearings.filter(({ below }) => !("ground" in below));
  const shared = new Set(plan.bearings.filter((planned) => !isOwn(planned)).flatMap(({ below }) => padOf(below)));
  const alone: Analysis = {
    ...analysis,
    structure: {
      ...structure,
      building: {
        ...structure.building,
        units: [unit],
        pads: structure.building.pads.filter(({ id }) => !shared.has(id)),
      },
    },
  };
  const ownModel: BuiltModel = {
    notes,
    plan: { ...plan, bearings: plan.bearings.filter(isOwn), freePosts: [], beams: [], ties: [] },
    model: {
      ...model,
      units: model.units.filter(({ id }) => id === unit.id),
      // links stand in the order of the bearings that have one
      links: model.links.filter((_, n) => isOwn(linked[n] ?? missing())),
    },
  };
  const others = structure.building.units.filter(({ id }) => besides.includes(id));
  return [
    ...checkedParts(alone, ownModel, scheme, basis, made),
    ...partsInside(others, analysis, built, scheme, basis, made),
  ];
}

const padOf = (below: PlannedBearing["below"]): string[] => ("ground" in below ? [below.ground] : []);

function missing(): never {
  throw new Error("each link belongs to a bearing");
}
