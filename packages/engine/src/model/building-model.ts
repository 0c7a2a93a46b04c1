import type {
  ModelBeam,
  ModelCase,
  ModelLink,
  ModelNode,
  ModelPanel,
  ModelSection,
  ModelSpring,
  ModelSupport,
  Triple,
} from "./analytical-model.ts";
import type { HoldPlan } from "./plan-holds.ts";

/** Lines and sheets of one container in its own axes, mm. */
export interface UnitFragment {
  /** Equal keys mean equal content; containers with equal keys are condensed once. */
  readonly key: string;
  readonly nodes: readonly ModelNode[];
  readonly sections: Readonly<Record<string, ModelSection>>;
  readonly beams: readonly ModelBeam[];
  readonly panels: readonly ModelPanel[];
  /** Nodes that touch anything outside the container. */
  readonly retained: readonly string[];
  /** Those of them on which what is outside acts with a moment (moment-nodes.ts); absent where there are none. */
  readonly momentNodes?: readonly string[];
}

/** A container in the building: turned about the upright axis by thousandths of a degree, then moved, mm. */
export interface PlacedUnit {
  readonly id: string;
  readonly fragment: UnitFragment;
  readonly turnMdeg: number;
  readonly at: Triple;
  /** Loads by case, on the fragment's own names and in its own axes; no settlements. */
  readonly loads: Readonly<Record<string, ModelCase>>;
  /** Equal keys mean equal loads on the same names; without one the loads are condensed anew each time. */
  readonly loadsKey?: string;
}

/**
 * A whole building: containers, what joins them and what they stand on. Nodes are named `unit:node` (own nodes of
 * `between` by their id). Compression-only links and supports that lift give up all they hold.
 */
export interface BuildingModel {
  readonly units: readonly PlacedUnit[];
  /** Added steel that belongs to no container, and its nodes; global axes. */
  readonly between: {
    readonly nodes: readonly ModelNode[];
    readonly sections: Readonly<Record<string, ModelSection>>;
    readonly beams: readonly ModelBeam[];
    readonly loads: Readonly<Record<string, ModelCase>>;
  };
  readonly springs: readonly ModelSpring[];
  readonly links: readonly ModelLink[];
  readonly supports: readonly ModelSupport[];
  /** Holds in plan beside what links and supports say themselves. */
  readonly holds?: HoldPlan;
  readonly combos: Readonly<Record<string, Readonly<Record<string, number>>>>;
}

/** The name of a container's node in the building. */
export function nodeName(unit: string, node: string): string {
  return `${unit}:${node}`;
}
