import { fabricOf, type Fabric } from "../fabric/fabric-of.ts";
import type { Building } from "../geometry/building.ts";
import { LastMade } from "../numerics/last-made.ts";
import { topPartsOf, type TopParts } from "./top-parts.ts";

/** The building with what is left of each container and what can be stood on; every container has its entry. */
export type Structure = {
  readonly building: Building;
  readonly fabric: (unitId: string) => Fabric;
  readonly topParts: (unitId: string) => TopParts;
};

export function structureOf(building: Building): Structure {
  const fabrics = new Map(building.units.map((unit) => [unit.id, left.take(unit, [], () => fabricOf(unit))]));
  const fabric = (unitId: string) => entry(fabrics, unitId);
  const parts = new Map(
    building.units.map((unit) => [unit.id, tops.take(unit, [], () => topPartsOf(unit, fabric(unit.id)))]),
  );
  return { building, fabric, topParts: (unitId) => entry(parts, unitId) };
}

/** Of a container that an edit leaves, what is left of it stays. */
const left = new LastMade<Fabric>();
const tops = new LastMade<TopParts>();

function entry<T>(map: ReadonlyMap<string, T>, unitId: string): T {
  const found = map.get(unitId);
  if (found === undefined) throw new RangeError(`no container ${unitId} in this building`);
  return found;
}
