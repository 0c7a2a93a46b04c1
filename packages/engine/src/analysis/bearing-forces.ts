import type { AnalyticalModel, ModelLink } from "../model/analytical-model.ts";
import { withHolds, type HoldPlan } from "../model/plan-holds.ts";
import { flagsKey } from "../numerics/flags-key.ts";
import type { CombinedLoads } from "./combined-loads.ts";
import type { FrameSystem } from "./frame-system.ts";
import { liftedNames } from "./planned-holds.ts";
import type { Prepared } from "./prepared.ts";
import type { LoadVector, Movement } from "./solve-movement.ts";

/** A solved load vector: its state and its movement. */
type Settled = { readonly prepared: Pick<Prepared, "state" | "held">; readonly result: Movement };

/**
 * Forces of links and supports on what stands on them as plain numbers, N, global axes: three of each link in the model's
 * order, then three of each supported node.
 */
export class BearingForces {
  /** Where the three forces of each link (by its id) and support (by its node) stand. */
  readonly at: ReadonlyMap<string, number>;
  private readonly frame: FrameSystem;
  private readonly model: AnalyticalModel;
  private readonly holds: HoldPlan | undefined;
  private readonly supports: readonly string[];
  private readonly linksBy = new Map<string, readonly ModelLink[]>();

  constructor(frame: FrameSystem, model: AnalyticalModel, holds: HoldPlan | undefined) {
    this.frame = frame;
    this.model = model;
    this.holds = holds;
    this.supports = [...new Set(model.supports.map(({ node }) => node))];
    this.at = new Map([...model.links.map(({ id }) => id), ...this.supports].map((name, n) => [name, 3 * n]));
  }

  under({ prepared, result }: Settled, { forces, slips }: LoadVector & Pick<CombinedLoads, "slips">): Float64Array {
    const all = new Float64Array(3 * (this.model.links.length + this.supports.length));
    this.linksIn(prepared.state.lost).forEach((link, n) => this.ofLink(link, { prepared, result }, slips, all, 3 * n));
    this.supports.forEach((id, n) => {
      const node = this.frame.nodeOf.get(id) ?? NaN;
      for (let c = 0, at = 3 * (this.model.links.length + n); c < 3; c++) {
        const f = node * 6 + c;
        if (prepared.held[f]) all[at + c] = (result.answered[f] ?? 0) - (forces[f] ?? 0);
      }
    });
    return all;
  }

  private ofLink(
    link: ModelLink,
    { prepared: { state }, result: { movement } }: Settled,
    slips: CombinedLoads["slips"],
    all: Float64Array,
    at: number,
  ): void {
    const bearing = this.frame.linkBearings.get(link.id);
    const open = bearing !== undefined && state.open[bearing] === 1;
    const slipped = slips?.get(link.id);
    const [i, j] = [this.frame.nodeOf.get(link.i) ?? NaN, this.frame.nodeOf.get(link.j) ?? NaN];
    for (let c = 0; c < 3; c++)
      if (!open || c !== UPRIGHT)
        all[at + c] =
          (link.k[c] ?? 0) * ((movement[i * 6 + c] ?? 0) - (movement[j * 6 + c] ?? 0) + (slipped?.[c] ?? 0));
  }

  /** Links as they hold once these bearings have lifted. */
  private linksIn(lost: Uint8Array): readonly ModelLink[] {
    const key = flagsKey(lost);
    const { supportBearings, linkBearings } = this.frame;
    const { links, supports } = this.model;
    const known =
      this.linksBy.get(key) ??
      withHolds(links, supports, this.holds, liftedNames(lost, supportBearings, linkBearings)).links;
    this.linksBy.set(key, known);
    return known;
  }
}

const UPRIGHT = 2;
