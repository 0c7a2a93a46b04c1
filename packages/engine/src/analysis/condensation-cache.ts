import { FactorMemory } from "../numerics/factor-memory.ts";
import { BoundedStore } from "./bounded-store.ts";
import { localUnitLoads, type LocalUnitLoads } from "./unit-loads.ts";
import { condense, type Condensation, type Condensed } from "./condense.ts";
import type { PlacedUnit, UnitFragment } from "../model/building-model.ts";
import { unitElements, type UnitElements } from "./unit-elements.ts";

/** Condensed containers and their condensed loads, kept from one solution to the next; most of the room is for the first. */
export class CondensationCache {
  private readonly parts: BoundedStore<Condensation<UnitElements>>;
  private readonly loads: BoundedStore<LocalUnitLoads>;
  /** The last building solved, on its bearing points. */
  readonly building = new FactorMemory();

  constructor(limitBytes: number) {
    this.parts = new BoundedStore(limitBytes * PARTS_SHARE, partBytes);
    this.loads = new BoundedStore(limitBytes * (1 - PARTS_SHARE), loadBytes);
  }

  /** How many containers were condensed because the cache did not hold them. */
  get condensed(): number {
    return this.parts.made;
  }

  /** How many condensed containers it holds. */
  get size(): number {
    return this.parts.size;
  }

  part(fragment: UnitFragment): Condensation<UnitElements> {
    return this.parts.take(fragment.key, () => condense(unitElements(fragment)));
  }

  loadsOn(unit: PlacedUnit, condensed: Condensed<UnitElements>): LocalUnitLoads {
    const make = (): LocalUnitLoads => localUnitLoads(unit, condensed);
    return unit.loadsKey === undefined ? make() : this.loads.take(`${unit.loadsKey} ${unit.fragment.key}`, make);
  }
}

const PARTS_SHARE = 0.8;
const BYTES_PER_NUMBER = 8;

function partBytes(condensation: Condensation<UnitElements>): number {
  if (!condensation.stable) return 0;
  const { factor, stiffness, equationOf, part } = condensation.condensed;
  const panels = factor.panels.reduce((sum, panel) => sum + panel.length, 0);
  const elements = part.elements.reduce((sum, { matrix }) => sum + matrix.length, 0);
  return BYTES_PER_NUMBER * (panels + elements + stiffness.length + equationOf.length);
}

function loadBytes({ condensed }: LocalUnitLoads): number {
  return BYTES_PER_NUMBER * condensed.reduced.length;
}
