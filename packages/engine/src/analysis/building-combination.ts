import type { FrameRefusal, FrameSolution } from "./frame-result.ts";
import type { UnitSolution } from "./recover-unit.ts";
import type { ContactState } from "./system.ts";

/** A solved combination of a building; what is not plain numbers is worked out when it is asked for. N, mm, radians. */
export interface BuildingCombination {
  /** Everything between the containers: their retained nodes, links, supports and added steel. */
  readonly frame: FrameSolution;
  /** The inside of one container. */
  readonly unit: (id: string) => UnitSolution;
  /**
   * Six movements of every node between the containers, global axes, in the order of `nodeIds`; rotations that nothing outside
   * a container turns are 0 here and stand in `frame` and `unit`.
   */
  readonly movement: Float64Array;
  readonly nodeIds: readonly string[];
  /** Movements of the freedoms by which a container is joined to others, in its own axes. */
  readonly retainedIn: (unitId: string) => Float64Array;
  /** Three forces on what stands on a link (by its id) or a support (by its node), global axes. */
  readonly bearing: (name: string) => readonly [number, number, number];
  /** Largest unbalanced force over the largest load. */
  readonly residual: number;
  /** Which bearings have opened. */
  readonly state: ContactState;
}

export type BuildingAnswer = BuildingCombination | FrameRefusal;
