import { cbrt, cos, exp, log, pow, sin, tan, tanh } from "../numerics/elementary.ts";
import type { Expression, FunctionName, Operator } from "./expression.ts";

/** The number a formula gives for the values of its symbols. Throws a RangeError for a symbol without a value. */
export function evaluateExpression(expression: Expression, valueOf: (symbol: string) => number): number {
  switch (expression.kind) {
    case "number":
      return expression.value;
    case "symbol":
      return expression.name === "π" ? Math.PI : valueOf(expression.name);
    case "negate":
      return -evaluateExpression(expression.of, valueOf);
    case "operation":
      return operations[expression.operator](
        evaluateExpression(expression.left, valueOf),
        evaluateExpression(expression.right, valueOf),
      );
    case "call":
      return call(
        expression.name,
        expression.of.map((argument) => evaluateExpression(argument, valueOf)),
      );
  }
}

const operations: Readonly<Record<Operator, (left: number, right: number) => number>> = {
  add: (left, right) => left + right,
  subtract: (left, right) => left - right,
  multiply: (left, right) => left * right,
  divide: (left, right) => left / right,
  power: raise,
};

/** Small whole exponents by multiplication: exact in the cases a reader can follow by hand. */
function raise(base: number, exponent: number): number {
  if (exponent === 2) return base * base;
  if (exponent === 3) return base * base * base;
  if (exponent === 4) return base * base * (base * base);
  return pow(base, exponent);
}

const functionsOfOne: Readonly<Record<Exclude<FunctionName, "min" | "max">, (value: number) => number>> = {
  sqrt: (value) => Math.sqrt(value),
  cbrt,
  abs: (value) => Math.abs(value),
  exp,
  ln: log,
  sin,
  cos,
  tan,
  tanh,
};

function call(name: FunctionName, values: readonly number[]): number {
  if (name === "min") return Math.min(...values);
  if (name === "max") return Math.max(...values);
  const [value] = values;
  if (value === undefined || values.length > 1) throw new SyntaxError(`${name} takes one value, not ${values.length}`);
  return functionsOfOne[name](value);
}
