import type { Analysis } from "../load-path/analysis.ts";
import type { BuiltModel } from "../model/build-model.ts";
import { usualAssumptions } from "../model/model-assumptions.ts";
import { unitLinesOf } from "../model/unit-lines-of.ts";
import type { StrengthBasis } from "./strength-basis.ts";
import type { StrengthPart } from "./strength-part.ts";
import { unitParts } from "./unit-parts.ts";

/** Members, corner posts and sheets of one container, without what it stands on. No post is drawn in its walls. */
export function unitPartsAlone(
  { structure }: Analysis,
  { model, plan }: BuiltModel,
  unitId: string,
  basis: StrengthBasis,
): StrengthPart[] {
  const unit = structure.building.unitById.get(unitId);
  const placed = model.units.find(({ id }) => id === unitId);
  if (unit === undefined || placed === undefined) throw new RangeError(`container ${unitId} is not in the model`);
  return unitParts(unit, placed, unitLinesOf(structure, plan, unit, usualAssumptions), () => "", basis);
}
