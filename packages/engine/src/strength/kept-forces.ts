import { BoundedStore } from "../analysis/bounded-store.ts";
import type { PlacedUnit } from "../model/building-model.ts";
import { insideKey, type UnitForces } from "./unit-forces.ts";

/** The insides of containers that are ready: an edit leaves most of them as they are, though each model places its own. */
export class KeptForces {
  private readonly placed = new WeakMap<PlacedUnit, UnitForces>();
  private readonly byKey: BoundedStore<UnitForces>;

  constructor(limitBytes: number) {
    this.byKey = new BoundedStore(limitBytes, ({ bytes }) => bytes);
  }

  take(unit: PlacedUnit, make: () => UnitForces): UnitForces {
    const known = this.placed.get(unit);
    if (known !== undefined) return known;
    const key = insideKey(unit);
    const forces = key === undefined ? make() : this.byKey.take(`${unit.id} ${key}`, make);
    this.placed.set(unit, forces);
    return forces;
  }
}
