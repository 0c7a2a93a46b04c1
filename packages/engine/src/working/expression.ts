/**
 * A formula as a tree. `divide` and `power` are kept apart from the other operations because they are set as a fraction
 * and as an exponent on the page.
 */
export type Expression =
  | { readonly kind: "number"; readonly value: number }
  | { readonly kind: "symbol"; readonly name: string }
  | { readonly kind: "negate"; readonly of: Expression }
  | { readonly kind: "operation"; readonly operator: Operator; readonly left: Expression; readonly right: Expression }
  | { readonly kind: "call"; readonly name: FunctionName; readonly of: readonly Expression[] };

export type Operator = "add" | "subtract" | "multiply" | "divide" | "power";

export const functionNames = ["sqrt", "cbrt", "min", "max", "abs", "exp", "ln", "sin", "cos", "tan", "tanh"] as const;
export type FunctionName = (typeof functionNames)[number];
