import type { ModelledBearing } from "../strength/modelled-bearings.ts";

/** Whether a bearing is of this unit, or on it. */
export function touches({ planned: { above, below } }: Pick<ModelledBearing, "planned">, unitId: string): boolean {
  return ("unitId" in above && above.unitId === unitId) || ("point" in below && below.point.unitId === unitId);
}
