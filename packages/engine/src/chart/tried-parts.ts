import type { Scheme } from "@cornerway/schema";
import type { Unit } from "../geometry/building.ts";
import type { Analysis } from "../load-path/analysis.ts";
import type { PlannedBearing } from "../model/bearing-plan.ts";
import type { BuiltModel } from "../model/build-model.ts";
import { checkedParts } from "../strength/checked-parts.ts";
import type { StrengthBasis } from "../strength/strength-basis.ts";
import type { StrengthPart } from "../strength/strength-part.ts";
import { touches } from "./touches.ts";

/** Everything that is checked of one unit and at its bearings, and of the pads that carry it alone. */
export function triedParts(
  analysis: Analysis,
  { model, plan, notes }: BuiltModel,
  unit: Unit,
  scheme: Scheme,
  basis: StrengthBasis,
): StrengthPart[] {
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
  return checkedParts(alone, ownModel, scheme, basis);
}

const padOf = (below: PlannedBearing["below"]): string[] => ("ground" in below ? [below.ground] : []);

function missing(): never {
  throw new Error("each link belongs to a bearing");
}
