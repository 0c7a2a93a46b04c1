import { AlikeElements } from "../elements/alike.ts";
import { FactorMemory } from "../numerics/factor-memory.ts";
import { KnownFronts } from "../numerics/known-fronts.ts";
import { KnownOrders } from "../numerics/known-orders.ts";
import { KnownTrees } from "../numerics/known-trees.ts";
import { sameNumbers } from "../numerics/same-graph.ts";
import { BoundedStore } from "./bounded-store.ts";
import { loadBasis, type LoadBasis } from "./load-basis.ts";
import { localUnitLoads, type LocalUnitLoads } from "./unit-loads.ts";
import { condense, type Condensation, type Condensed } from "./condense.ts";
import type { PlacedUnit, UnitFragment } from "../model/building-model.ts";
import { LastNumbering } from "./last-numbering.ts";
import { unitElements, type MadeUnit, type UnitElements } from "./unit-elements.ts";

/**
 * Condensed containers and their condensed loads, kept from one solution to the next; most of the room is for the first. The
 * elements of a container are thousands of small objects that slow every sweep of the collector (measured), so only the
 * last few containers' are kept; others are made anew from the fragment.
 */
export class CondensationCache {
  private readonly parts: BoundedStore<Condensation<UnitElements>>;
  private readonly elements: BoundedStore<UnitElements>;
  private readonly alike = new AlikeElements();
  /** Under the next set of assumptions the same container has the same lines. */
  private last: MadeUnit | undefined;
  private readonly orders = new KnownOrders();
  private readonly trees = new KnownTrees();
  private readonly numbering = new LastNumbering();
  private readonly fronts: KnownFronts;
  private readonly loads: BoundedStore<LocalUnitLoads>;
  private readonly bases: BoundedStore<LoadBasis>;
  /** The last building solved, on its bearing points. */
  readonly building = new FactorMemory();
  /** Of the freedoms between its containers. */
  readonly between = new LastNumbering(sameNumbers);

  constructor(limitBytes: number) {
    this.parts = new BoundedStore(limitBytes * PARTS_SHARE, partBytes);
    this.elements = new BoundedStore(ELEMENTS_KEPT, () => 1);
    this.fronts = new KnownFronts(limitBytes * FRONTS_SHARE);
    this.loads = new BoundedStore(limitBytes * LOADS_SHARE, loadBytes);
    this.bases = new BoundedStore(limitBytes * BASES_SHARE, basisBytes);
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
    return this.parts.take(fragment.key, () => this.condensation(fragment));
  }

  private condensation(fragment: UnitFragment): Condensation<UnitElements> {
    const take = (): UnitElements => this.elements.take(fragment.key, () => this.elementsOf(fragment));
    const { orders, trees, numbering: last, fronts } = this;
    const condensation = condense(take(), { orders, trees, last, fronts });
    return condensation.stable ? { stable: true, condensed: withPart(condensation.condensed, take) } : condensation;
  }

  private elementsOf(fragment: UnitFragment): UnitElements {
    this.alike.forgetIfMany();
    const made = unitElements(fragment, this.alike, this.last);
    this.last = { fragment, made };
    return made;
  }

  loadsOn(unit: PlacedUnit, condensed: Condensed<UnitElements>): LocalUnitLoads {
    const { loadsKey } = unit;
    if (loadsKey === undefined) return localUnitLoads(loadBasis(unit.loads), condensed);
    return this.loads.take(`${loadsKey} ${unit.fragment.key}`, () =>
      localUnitLoads(
        this.bases.take(loadsKey, () => loadBasis(unit.loads)),
        condensed,
      ),
    );
  }
}

const PARTS_SHARE = 0.75;
/** Enough for the stretches of a few dozen containers. */
const FRONTS_SHARE = 0.05;
const LOADS_SHARE = 0.15;
const BASES_SHARE = 0.05;
/** Whole containers come up between others again and again. */
const ELEMENTS_KEPT = 2;
const BYTES_PER_NUMBER = 8;

function withPart(condensed: Condensed<UnitElements>, take: () => UnitElements): Condensed<UnitElements> {
  const { retained, freedoms, stiffness, factor, equationOf } = condensed;
  return {
    get part() {
      return take();
    },
    retained,
    freedoms,
    stiffness,
    factor,
    equationOf,
  };
}

function partBytes(condensation: Condensation<UnitElements>): number {
  if (!condensation.stable) return 0;
  const { factor, stiffness, equationOf } = condensation.condensed;
  const panels = factor.panels.reduce((sum, panel) => sum + panel.length, 0);
  return BYTES_PER_NUMBER * (panels + stiffness.length + equationOf.length);
}

function loadBytes({ condensed }: LocalUnitLoads): number {
  return BYTES_PER_NUMBER * condensed.reduced.length;
}

function basisBytes({ loads, slots, shares }: LoadBasis): number {
  return BYTES_PER_NUMBER * loads.length * (slots.length + shares.size);
}
