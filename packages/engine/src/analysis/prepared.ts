import type { Element } from "../elements/element.ts";
import type { SparseFactor } from "../numerics/sparse-factor.ts";
import type { IdleDirection } from "./idle-directions.ts";
import type { ContactState, System } from "./system.ts";

/** A system factorised in one state of its bearings. */
export interface Prepared {
  readonly system: System;
  readonly state: ContactState;
  readonly elements: readonly Element[];
  readonly held: Uint8Array;
  /** Equation number of each freedom, −1 where it is held or idle. */
  readonly equationOf: Int32Array;
  readonly factor: SparseFactor;
  readonly idle: readonly IdleDirection[];
  /** Pressures under all bearings when one is held open by 1 mm, as far as asked for: no load is in them, all vectors share them. */
  readonly unitOpenings: Map<number, number[]>;
}
