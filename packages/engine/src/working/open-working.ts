import type { Certainty } from "@cornerway/schema";
import { evaluateExpression } from "./evaluate-expression.ts";
import { parseExpression } from "./parse-expression.ts";
import { substituteExpression } from "./substitute-expression.ts";
import type { Unit } from "./unit.ts";
import { weakestCertainty } from "./weakest-certainty.ts";
import type { Clause, Relation, Working, WorkingStep, WorkingSymbol, WorkingValue } from "./working.ts";

export type OpenWorking = {
  /** A value from outside: symbol, value, unit, what it is, how certain, and its source. Returns the value. */
  let(symbol: string, value: number, unit: Unit, meaning: string, certainty: Certainty, source?: string): number;
  /** The result of another working as a value of this one; that working goes with it as a part. Returns the value. */
  take(symbol: string, part: Working, meaning?: string): number;
  /** The value of a formula of what is known so far, recorded as one step. `place` is the equation within the clause. */
  compute(symbol: string, formula: string, unit: Unit, place?: string): number;
  /** Whether one formula stands in the relation to another, recorded as one step. */
  when(left: string, relation: Relation, right: string, place?: string): boolean;
  /** A sentence the page carries below the calculation. */
  note(sentence: string): void;
  /** The value of a symbol already known. */
  value(symbol: string): number;
  /** The finished working, stating a symbol as its result. */
  giving(symbol: string): Working;
  /** The finished working of a comparison: what is asked against what may be, utilisation = their ratio. */
  against(demand: string, limit: string): Working;
};

/**
 * Opens a calculation. What is printed is what is computed: each number comes from the formula recorded with it.
 * A symbol named twice, an unknown symbol or a result that is no finite number throws.
 */
export function openWorking(title: string, clause: Clause): OpenWorking {
  const symbols: WorkingSymbol[] = [];
  const steps: WorkingStep[] = [];
  const notes: string[] = [];
  const parts: Working[] = [];
  const known = new Map<string, WorkingValue>();

  const find = (symbol: string): WorkingValue => {
    const value = known.get(symbol);
    if (value === undefined) throw new RangeError(`working "${title}": no value for ${symbol}`);
    return value;
  };
  const valueOf = (symbol: string): number => find(symbol).value;
  const evaluate = (formula: string): number => evaluateExpression(parseExpression(formula), valueOf);
  const learn = (symbol: string, value: number, unit: Unit): number => {
    if (known.has(symbol)) throw new RangeError(`working "${title}": ${symbol} has a value already`);
    if (!Number.isFinite(value)) throw new RangeError(`working "${title}": ${symbol} is ${value}`);
    known.set(symbol, { symbol, value, unit });
    return value;
  };
  const finished = (result: WorkingValue): Working => ({
    title,
    clause,
    certainty: weakestCertainty([clause, ...symbols, ...parts].map(({ certainty }) => certainty)),
    symbols,
    steps,
    result,
    notes,
    parts,
  });

  return {
    let(symbol, value, unit, meaning, certainty, source) {
      learn(symbol, value, unit);
      symbols.push({ symbol, meaning, value, unit, certainty, ...(source === undefined ? {} : { source }) });
      return value;
    },
    take(symbol, part, meaning = part.title) {
      const { value, unit } = part.result;
      learn(symbol, value, unit);
      symbols.push({ symbol, meaning, value, unit, certainty: part.certainty, source: part.title });
      parts.push(part);
      return value;
    },
    compute(symbol, formula, unit, place) {
      const substituted = substituteExpression(parseExpression(formula), valueOf);
      const result = learn(symbol, evaluate(formula), unit);
      steps.push({ kind: "value", symbol, formula, substituted, result, unit, ...placed(place) });
      return result;
    },
    when(left, relation, right, place) {
      const [leftValue, rightValue] = [evaluate(left), evaluate(right)];
      const holds = relations[relation](leftValue, rightValue);
      steps.push({ kind: "condition", left, relation, right, leftValue, rightValue, holds, ...placed(place) });
      return holds;
    },
    note(sentence) {
      notes.push(sentence);
    },
    value: valueOf,
    giving: (symbol) => finished(find(symbol)),
    against: (demand, limit) => compared(finished(find(demand)), find(limit)),
  };
}

const placed = (place: string | undefined): { place?: string } => (place === undefined ? {} : { place });

const relations: Readonly<Record<Relation, (left: number, right: number) => boolean>> = {
  "<=": (left, right) => left <= right,
  "<": (left, right) => left < right,
  ">=": (left, right) => left >= right,
  ">": (left, right) => left > right,
};

function compared(working: Working, limit: WorkingValue): Working {
  if (limit.value <= 0) throw new RangeError(`working "${working.title}": the limit ${limit.symbol} is ${limit.value}`);
  if (limit.unit !== working.result.unit)
    throw new RangeError(`working "${working.title}": ${working.result.unit} against ${limit.unit}`);
  return { ...working, limit, utilisation: working.result.value / limit.value };
}
