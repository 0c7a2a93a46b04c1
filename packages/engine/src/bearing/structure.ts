import { fabricOf, type Fabric } from "../fabric/fabric-of.ts";
import type { Building } from "../geometry/building.ts";
import { topPartsOf, type TopParts } from "./top-parts.ts";

/** The building with what is left of each container and what can be stood on; every container has its entry. */
export type Structure = {
  readonly building: Building;
  readonly fabric: (unitId: string) => Fabric;
  readonly topParts: (unitId: string) => TopParts;
};

export function structureOf(building: Building): Structure {
  const fabrics = new Map(building.units.map((unit) => [unit.id, fabricOf(unit)]));
  const fabric = (unitId: string) => entry(fabrics, unitId);
  const parts = new Map(building.units.map((unit) => [unit.id, topPartsOf(unit, fabric(unit.id))]));
  return { building, fabric, topParts: (unitId) => entry(parts, unitId) };
}

function entry<T>(map: ReadonlyMap<string, T>, unitId: string): T {
  const found = map.get(unitId);
  if (found === undefined) throw new RangeError(`no container ${unitId} in this building`);
  return found;
}
