import { parseExpression, type Expression, type Operator } from "@cornerway/engine";
import { createElement, type ReactNode } from "react";
import { figure } from "./figure.ts";

/** A formula of the engine's notation as MathML, so that it copies and is read aloud. */
export const Formula = ({ of, children }: { of: string; children?: ReactNode }) =>
  createElement(
    "math",
    { display: "inline", displaystyle: "true" },
    ml("mrow", expressionMath(parseExpression(of)), children),
  );

/** A name such as F_cr: one letter with what follows the line as its index. */
export function SymbolName({ of }: { of: string }) {
  return createElement("math", { display: "inline" }, symbolMath(of));
}

const ml = (tag: string, ...children: ReactNode[]) => createElement(tag, null, ...children);

/** A row whose parts are set side by side. */
export const row = (...children: ReactNode[]) => ml("mrow", ...children);

export const sign = (text: string) => ml("mo", text);

export const numberMath = (value: number) => ml("mn", figure(value));

export function symbolMath(name: string): ReactNode {
  const [head = "", ...rest] = name.split("_");
  const letter = ml("mi", greek[head] ?? head);
  const index = rest.join(",");
  if (index === "") return letter;
  // an index of several letters is a word, set upright
  return ml("msub", letter, index.length > 1 ? ml("mtext", index) : ml("mi", index));
}

const greek: Readonly<Record<string, string>> = { phi: "φ", Omega: "Ω", lambda: "λ", tau: "τ", sigma: "σ" };

export function expressionMath(expression: Expression): ReactNode {
  switch (expression.kind) {
    case "number":
      return numberMath(expression.value);
    case "symbol":
      return symbolMath(expression.name);
    case "negate":
      return row(sign("−"), bracketed(expression.of, 3));
    case "operation":
      return operationMath(expression);
    case "call":
      return callMath(expression);
  }
}

type Operation = Extract<Expression, { kind: "operation" }>;
type Call = Extract<Expression, { kind: "call" }>;

/** How tightly each holds; brackets stand where something looser is inside. A fraction brackets by itself. */
const holds: Readonly<Record<Operator, number>> = { add: 1, subtract: 1, multiply: 2, divide: 2, power: 4 };

function operationMath({ operator, left, right }: Operation): ReactNode {
  switch (operator) {
    case "divide":
      return ml("mfrac", expressionMath(left), expressionMath(right));
    case "power":
      return ml("msup", bracketed(left, 5), expressionMath(right));
    case "multiply":
      return row(bracketed(left, 2), sign(needsCross(left, right) ? "×" : "\u2062"), bracketed(right, 2));
    case "add":
      return row(expressionMath(left), sign("+"), expressionMath(right));
    case "subtract":
      return row(expressionMath(left), sign("−"), bracketed(right, 2));
  }
}

/** Numbers side by side would read as one; letters need no sign between them. */
const needsCross = (left: Expression, right: Expression): boolean => endsInNumber(left) && startsWithNumber(right);

function endsInNumber(expression: Expression): boolean {
  if (expression.kind === "operation")
    return expression.operator === "multiply" ? endsInNumber(expression.right) : expression.operator !== "divide";
  return expression.kind === "number";
}

function startsWithNumber(expression: Expression): boolean {
  if (expression.kind === "operation") return expression.operator === "divide" || startsWithNumber(expression.left);
  return expression.kind === "number" || expression.kind === "negate";
}

function bracketed(part: Expression, least: number): ReactNode {
  const inside = expressionMath(part);
  return tightness(part) < least ? row(sign("("), inside, sign(")")) : inside;
}

function tightness(part: Expression): number {
  if (part.kind === "operation") return part.operator === "divide" ? 4 : holds[part.operator];
  return part.kind === "negate" ? 3 : 6;
}

function callMath({ name, of }: Call): ReactNode {
  const [first] = of;
  if (name === "sqrt" && first !== undefined) return ml("msqrt", expressionMath(first));
  if (name === "cbrt" && first !== undefined) return ml("mroot", expressionMath(first), ml("mn", "3"));
  if (name === "abs" && first !== undefined) return row(sign("|"), expressionMath(first), sign("|"));
  if (name === "exp" && first !== undefined) return ml("msup", ml("mi", "e"), expressionMath(first));
  const parts = of.flatMap((part, at) => (at === 0 ? [expressionMath(part)] : [sign(","), expressionMath(part)]));
  return row(ml("mi", name), sign("\u2061"), sign("("), ...parts, sign(")"));
}
