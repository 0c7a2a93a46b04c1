import type { Clause } from "../working/working.ts";
import type { Axis } from "./wind-shape.ts";

export type IrregularityKind =
  | "torsional"
  | "extreme torsional"
  | "re-entrant corner"
  | "diaphragm hole"
  | "out-of-plane offset"
  | "lines not parallel"
  | "soft storey"
  | "extreme soft storey"
  | "mass"
  | "vertical geometry"
  | "in-plane discontinuity"
  | "weak storey"
  | "extreme weak storey";

/** What follows: nothing but heavier factors, overstrength for what carries the line, or no permission at all. */
export type IrregularityConsequence = "noted" | "overstrength below" | "not permitted";

/** An irregularity found, with the number that decided and the line it concerns where there is one. */
export type Irregularity = {
  readonly kind: IrregularityKind;
  readonly storeyId: string;
  readonly axis?: Axis;
  readonly lineId?: string;
  readonly value: number;
  readonly limit: number;
  readonly consequence: IrregularityConsequence;
  readonly clause: Clause;
};
