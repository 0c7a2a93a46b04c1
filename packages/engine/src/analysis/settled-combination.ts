import { withHolds, type HoldPlan } from "../model/plan-holds.ts";
import type { BearingForces } from "./bearing-forces.ts";
import type { BuildingCombination } from "./building-combination.ts";
import type { BuildingSystem } from "./building-system.ts";
import type { CombinedLoads } from "./combined-loads.ts";
import type { ContactOutcome } from "./contact.ts";
import type { FrameSolution } from "./frame-result.ts";
import { ownMovement } from "./own-movement.ts";
import { liftedNames } from "./planned-holds.ts";
import { recoverFrame } from "./recover-frame.ts";
import { unbalanced } from "./solve-movement.ts";
import type { ContactState } from "./system.ts";
import { withInnerRotations } from "./inner-rotations.ts";

type Settled = {
  readonly building: BuildingSystem;
  readonly holds: HoldPlan | undefined;
  readonly forces: BearingForces;
  readonly outcome: Extract<ContactOutcome, { settled: true }>;
  readonly load: CombinedLoads;
};

/** A combination whose bearings have settled. */
export class SettledCombination implements BuildingCombination {
  readonly unit: BuildingCombination["unit"];
  private readonly settled: Settled;
  private recovered: FrameSolution | undefined;
  private onBearings: Float64Array | undefined;

  constructor(settled: Settled, unit: BuildingCombination["unit"]) {
    this.settled = settled;
    this.unit = unit;
  }

  get movement(): Float64Array {
    return this.settled.outcome.result.movement;
  }

  get state(): ContactState {
    return this.settled.outcome.prepared.state;
  }

  get nodeIds(): readonly string[] {
    return this.settled.building.frame.nodeIds;
  }

  retainedIn(unitId: string): Float64Array {
    const own = this.settled.building.unitById.get(unitId);
    if (own === undefined) throw new RangeError(`the building has no container "${unitId}"`);
    return ownMovement(own, this.movement);
  }

  bearing(name: string): readonly [number, number, number] {
    const { forces, outcome, load } = this.settled;
    const all = (this.onBearings ??= forces.under(outcome, load));
    const at = forces.at.get(name) ?? NaN;
    return [all[at] ?? 0, all[at + 1] ?? 0, all[at + 2] ?? 0];
  }

  get residual(): number {
    const { outcome, load } = this.settled;
    const most = load.forces.reduce((largest, force) => Math.max(largest, Math.abs(force)), 0);
    return most > 0 ? unbalanced(outcome.prepared, outcome.result, load) / most : this.frame.residual;
  }

  get frame(): FrameSolution {
    this.recovered ??= this.recover();
    return this.recovered;
  }

  private recover(): FrameSolution {
    const { building, holds, outcome, load } = this.settled;
    const { frame, skeleton } = building;
    const lifted = liftedNames(outcome.prepared.state.lost, frame.supportBearings, frame.linkBearings);
    const held = withHolds(skeleton.links, skeleton.supports, holds, lifted);
    const { unit, settled } = this;
    const solution = recoverFrame(frame, { ...skeleton, ...held }, outcome, load);
    let displacements: FrameSolution["displacements"] | undefined;
    return {
      ...solution,
      get displacements() {
        return (displacements ??= withInnerRotations(solution.displacements, settled.building, unit));
      },
    };
  }
}
