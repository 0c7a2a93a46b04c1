import type { Certainty } from "@cornerway/schema";
import type { Unit } from "./unit.ts";

/** Where a rule stands: `{ document: "AISC 360", edition: "2016", place: "E3" }`. */
export type Clause = {
  readonly document: string;
  readonly edition: string;
  readonly place: string;
  readonly certainty: Certainty;
};

/** A value that enters a working from outside. */
export type WorkingSymbol = {
  readonly symbol: string;
  readonly meaning: string;
  readonly value: number;
  readonly unit: Unit;
  readonly source?: string;
  readonly certainty: Certainty;
};

export type Relation = "<=" | "<" | ">=" | ">";

/** One line of a calculation. `formula`, `left`, `right` and `substituted` are read by `parseExpression`. */
export type WorkingStep =
  | {
      readonly kind: "value";
      readonly symbol: string;
      readonly formula: string;
      readonly substituted: string;
      readonly result: number;
      readonly unit: Unit;
      readonly place?: string;
    }
  | {
      readonly kind: "condition";
      readonly left: string;
      readonly relation: Relation;
      readonly right: string;
      readonly leftValue: number;
      readonly rightValue: number;
      readonly holds: boolean;
      readonly place?: string;
    };

export type WorkingValue = { readonly symbol: string; readonly value: number; readonly unit: Unit };

/**
 * A calculation as screen, interface and print all show it. Plain data: it has a canonical JSON form.
 * `certainty` is the weakest of the clause, the symbols and the parts. `parts` are workings whose results enter here.
 */
export type Working = {
  readonly title: string;
  readonly clause: Clause;
  readonly certainty: Certainty;
  readonly symbols: readonly WorkingSymbol[];
  readonly steps: readonly WorkingStep[];
  readonly result: WorkingValue;
  readonly limit?: WorkingValue;
  readonly utilisation?: number;
  readonly notes: readonly string[];
  readonly parts: readonly Working[];
};
