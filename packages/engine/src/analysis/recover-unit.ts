import { memberEndForcesOfSides, toLocalComponents } from "../elements/member.ts";
import { panelFlow } from "../elements/shear-panel.ts";
import type { Triple } from "../model/analytical-model.ts";
import { reducedUnder } from "./unit-loads.ts";
import type { CondensedUnit } from "./building-system.ts";
import { recoverPart } from "./condense.ts";
import { ownMovement } from "./own-movement.ts";
import { turnVector } from "./turn-stiffness.ts";

/** What happens inside one container under one combination; names are the container's own, units N, mm, radians. */
export interface UnitSolution {
  /** Global axes. */
  readonly displacements: Readonly<Record<string, readonly number[]>>;
  /** Twelve forces on the member at end i then end j, local axes. */
  readonly memberEndForces: Readonly<Record<string, readonly number[]>>;
  /** Shear flow, N/mm. */
  readonly panelFlows: Readonly<Record<string, number>>;
}

/** A combination, and the movement of the building's nodes under it. */
export interface Solved {
  readonly combo: Readonly<Record<string, number>>;
  readonly movement: Float64Array;
}

/** Recovers the inside of a container under several combinations; each gets the bits it would get by itself. */
export function recoverUnit(unit: CondensedUnit, solved: readonly Solved[]): UnitSolution[] {
  const { condensed, loads } = unit;
  const onRetained = solved.map(({ movement }) => ownMovement(unit, movement));
  const combos = solved.map(({ combo }) => combo);
  const reduced = reducedUnder(loads, combos, condensed.factor.tree.equations);
  const inside = new Inside(unit, combos, recoverPart(condensed, reduced, onRetained));
  return solved.map((_, side) => new RecoveredUnit(inside, side));
}

/** The insides under all combinations; forces are worked out for all at once, the first time one is asked for. */
class Inside {
  readonly movements: readonly Float64Array[];
  readonly unit: CondensedUnit;
  readonly combos: readonly Readonly<Record<string, number>>[];
  private forces: readonly (readonly [string, readonly Float64Array[]])[] | undefined;

  constructor(
    unit: CondensedUnit,
    combos: readonly Readonly<Record<string, number>>[],
    movements: readonly Float64Array[],
  ) {
    this.unit = unit;
    this.combos = combos;
    this.movements = movements;
  }

  get ofMembers(): readonly (readonly [string, readonly Float64Array[]])[] {
    this.forces ??= this.workedOut();
    return this.forces;
  }

  private workedOut() {
    const loads = this.combos.map((combo) => uniformLoads(this.unit.unit.loads, combo));
    return [...this.unit.condensed.part.frame.members].map(([id, m]) => {
      const local = loads.map((on) => toLocalComponents(m.facts.axes, on.get(id) ?? [0, 0, 0]));
      return [id, memberEndForcesOfSides(m, this.movements, local)] as const;
    });
  }
}

/** Each table is written out when it is first asked for. */
class RecoveredUnit implements UnitSolution {
  private readonly inside: Inside;
  private readonly side: number;
  private moved: UnitSolution["displacements"] | undefined;
  private forces: UnitSolution["memberEndForces"] | undefined;
  private flows: UnitSolution["panelFlows"] | undefined;

  constructor(inside: Inside, side: number) {
    this.inside = inside;
    this.side = side;
  }

  get displacements(): UnitSolution["displacements"] {
    this.moved ??= this.allMoved();
    return this.moved;
  }

  get memberEndForces(): UnitSolution["memberEndForces"] {
    this.forces ??= Object.fromEntries(
      this.inside.ofMembers.map(([id, forces]) => [id, Array.from(forces[this.side] ?? [])]),
    );
    return this.forces;
  }

  get panelFlows(): UnitSolution["panelFlows"] {
    this.flows ??= this.allFlows();
    return this.flows;
  }

  private allFlows(): UnitSolution["panelFlows"] {
    const { panels } = this.inside.unit.condensed.part.frame;
    return Object.fromEntries([...panels].map(([id, panel]) => [id, panelFlow(panel, this.movement)]));
  }

  private allMoved(): UnitSolution["displacements"] {
    const { unit, turn } = this.inside.unit;
    const global = turnVector(this.movement, turn);
    return Object.fromEntries(unit.fragment.nodes.map(({ id }, n) => [id, [...global.subarray(n * 6, n * 6 + 6)]]));
  }

  private get movement(): Float64Array {
    return this.inside.movements[this.side] ?? NOTHING;
  }
}

const NOTHING = new Float64Array(0);

function uniformLoads(
  loads: CondensedUnit["unit"]["loads"],
  combo: Readonly<Record<string, number>>,
): Map<string, Triple> {
  const sum = new Map<string, Triple>();
  for (const [name, { beam_udl = [] }] of Object.entries(loads)) {
    const factor = combo[name] ?? 0;
    if (factor === 0) continue;
    for (const { beam, q } of beam_udl) {
      const [x, y, z] = sum.get(beam) ?? [0, 0, 0];
      sum.set(beam, [x + factor * q[0], y + factor * q[1], z + factor * q[2]]);
    }
  }
  return sum;
}
