import type { Element } from "../elements/element.ts";
import type { Border } from "../numerics/bordered-factor.ts";
import type { SparseFactor } from "../numerics/sparse-factor.ts";
import type { BorderUnknown, BorderUnknowns } from "./border-unknowns.ts";
import type { IdleDirection } from "./idle-directions.ts";
import type { ContactState, System } from "./system.ts";

/** A system ready to be solved in one state of its bearings. */
export interface Prepared {
  readonly system: System;
  readonly state: ContactState;
  readonly elements: readonly Element[];
  readonly held: Uint8Array;
  /** Equation number of each freedom, −1 where it is held or idle. */
  readonly equationOf: Int32Array;
  /** Of this state, or of the one it was updated from. */
  readonly factor: SparseFactor;
  /** What leads from the factorised state to this one; null where it is the one factorised. */
  readonly update: StateUpdate | null;
  readonly idle: readonly IdleDirection[];
  /** Unknowns by which the factorised state is led into others, as far as asked for. */
  readonly further: BorderUnknowns;
}

export interface StateUpdate {
  readonly from: Prepared;
  readonly unknowns: readonly BorderUnknown[];
  readonly border: Border;
}
