import type { BoundedStore } from "../analysis/bounded-store.ts";
import type { CondensationCache } from "../analysis/condensation-cache.ts";
import { sharesUnder, type LoadBasis } from "../analysis/load-basis.ts";
import type { BuildingCombination } from "../building.ts";
import type { PlacedUnit } from "../model/building-model.ts";
import { ForceRows, type SeenRun } from "./force-rows.ts";
import { heldForces, innerInfluence, type InnerInfluence } from "./inner-forces.ts";
import { ToldLines, ToldSheets } from "./told-forces.ts";

/** What repeats of the insides of containers: alike ones share it, also from one model to the next. */
export type InsideStores = {
  /** By the key of a container. */
  readonly influences: BoundedStore<InnerInfluence>;
  /** Forces under the loads of its basis with the bearing points held, by its key and that of its loads. */
  readonly held: BoundedStore<Float64Array>;
};

/** A solved run and how often each case counts in it. `token` tells it from every other and holds nothing of it. */
export type Loaded = AskedRun & { readonly solved: BuildingCombination };

/** What forces inside containers hang on. */
export type AskedRun = {
  readonly token: object;
  readonly solved: Pick<BuildingCombination, "retainedIn">;
  readonly factors: Readonly<Record<string, number>>;
};

export type RunsAfter = (places: number) => AskedRun | undefined;

/** Forces inside one container run by run, each valid until asked for another. `after` gives the runs asked for after it, so many places on. */
export type InsideForces = {
  /** Where the nine forces of a line stand among the forces of lines, and the flow of a sheet among flows. */
  readonly at: (id: string) => number;
  readonly panelAt: (id: string) => number;
  readonly under: (run: AskedRun, after: RunsAfter) => Float64Array;
  readonly flowsUnder: (run: AskedRun, after: RunsAfter) => Float64Array;
};

/**
 * Forces inside one container for any run: what its bearing points' movements cause, and what its loads cause with them
 * held. Exact in every state of the bearings, since what lies inside a container never opens.
 */
export class UnitForces implements InsideForces {
  readonly at: (id: string) => number;
  readonly panelAt: (id: string) => number;
  private readonly unitId: string;
  private readonly basis: LoadBasis;
  /** Apart, as runs of allowable level ask for flows alone. */
  private readonly lines: ForceRows;
  private readonly sheets: ForceRows;

  constructor(unit: PlacedUnit, cache: CondensationCache, { influences, held }: InsideStores) {
    const condensation = cache.part(unit.fragment);
    if (!condensation.stable) throw new Error(`container ${unit.id} is a mechanism`);
    const { condensed } = condensation;
    const influence = influences.take(unit.fragment.key, () => innerInfluence(condensed));
    const loads = cache.loadsOn(unit, condensed);
    const known = insideKey(unit);
    const work = (): Float64Array => heldForces(influence, condensed, loads);
    const byLoad = known === undefined ? work() : held.take(known, work);
    const [lines, sheets] = [new ToldLines(influence.layout, loads.basis), new ToldSheets(influence.layout)];
    const { byMovement } = influence;
    const [moved, loaded] = [
      (sheets.rows * byMovement.length) / influence.layout.length,
      sheets.rows * loads.basis.loads.length,
    ];
    this.sheets = new ForceRows(byMovement.subarray(0, moved), byLoad.subarray(0, loaded), sheets);
    this.lines = new ForceRows(byMovement.subarray(moved), byLoad.subarray(loaded), lines);
    this.at = lines.at;
    this.panelAt = sheets.at;
    this.basis = loads.basis;
    this.unitId = unit.id;
  }

  /** Room for the runs at hand, beside what alike containers share. */
  get bytes(): number {
    return this.lines.bytes + this.sheets.bytes;
  }

  under(run: AskedRun, after: RunsAfter): Float64Array {
    return this.told(this.lines, run, after);
  }

  flowsUnder(run: AskedRun, after: RunsAfter): Float64Array {
    return this.told(this.sheets, run, after);
  }

  private told(rows: ForceRows, run: AskedRun, after: RunsAfter): Float64Array {
    return rows.known(run.token) ?? rows.under(this.seen(run), (places) => this.seenAfter(after, places));
  }

  private seenAfter(after: RunsAfter, places: number): SeenRun | undefined {
    const run = after(places);
    return run && this.seen(run);
  }

  private seen({ token, solved, factors }: AskedRun): SeenRun {
    return {
      token,
      moved: () => solved.retainedIn(this.unitId),
      shares: () => sharesUnder(this.basis, factors),
    };
  }
}

/** By what the forces inside a container are known, whichever container it is; undefined where its loads have no key. */
export const insideKey = ({ loadsKey, fragment }: PlacedUnit): string | undefined =>
  loadsKey === undefined ? undefined : `${loadsKey} ${fragment.key}`;
