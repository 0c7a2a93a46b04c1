import type { Expression, Operator } from "./expression.ts";

/**
 * The formula with the numbers in place of its symbols, in the same notation, rounded to five significant figures for
 * reading. Calculation never uses these rounded numbers.
 */
export function substituteExpression(expression: Expression, valueOf: (symbol: string) => number): string {
  switch (expression.kind) {
    case "number":
      return String(expression.value);
    case "symbol":
      return expression.name === "π" ? "π" : numeral(valueOf(expression.name));
    case "negate":
      return `-${bracketed(expression.of, 3, valueOf)}`;
    case "operation":
      return operation(expression, valueOf);
    case "call":
      return `${expression.name}(${expression.of.map((part) => substituteExpression(part, valueOf)).join(", ")})`;
  }
}

type Operation = Extract<Expression, { kind: "operation" }>;

const signs: Readonly<Record<Operator, string>> = {
  add: " + ",
  subtract: " - ",
  multiply: " * ",
  divide: " / ",
  power: "^",
};

/** How tightly each holds; brackets stand where something looser is inside. */
const strength: Readonly<Record<Operator, number>> = { add: 1, subtract: 1, multiply: 2, divide: 2, power: 4 };

function operation({ operator, left, right }: Operation, valueOf: (symbol: string) => number): string {
  const own = strength[operator];
  const leftLeast = operator === "power" ? own + 1 : own;
  const rightLeast = operator === "subtract" || operator === "divide" ? own + 1 : own;
  return bracketed(left, leftLeast, valueOf) + signs[operator] + bracketed(right, rightLeast, valueOf);
}

function bracketed(part: Expression, least: number, valueOf: (symbol: string) => number): string {
  const text = substituteExpression(part, valueOf);
  return holds(part) < least || (part.kind === "symbol" && /^-|e/.test(text)) ? `(${text})` : text;
}

function holds(part: Expression): number {
  if (part.kind === "operation") return strength[part.operator];
  return part.kind === "negate" ? 3 : 5;
}

const numeral = (value: number): string => String(Number(value.toPrecision(5)));
