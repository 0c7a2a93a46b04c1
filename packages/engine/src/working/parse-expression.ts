import { functionNames, type Expression, type FunctionName, type Operator } from "./expression.ts";

/**
 * Reads a formula: numbers, symbols (`F_y`, `λ_c`, `π`), `+ − * / ^`, brackets and the functions of `functionNames`.
 * `^` binds tightest and to the right, so `-a^2` is −(a²). Throws a SyntaxError that shows the place.
 */
export function parseExpression(text: string): Expression {
  const known = parsed.get(text);
  if (known !== undefined) return known;
  const cursor: Cursor = { text, tokens: tokensOf(text), at: 0 };
  const expression = readSum(cursor);
  if (cursor.at < cursor.tokens.length) throw unexpected(cursor);
  parsed.set(text, expression);
  return expression;
}

/** Formulas are literals of this code, so what is kept here is bounded by them. */
const parsed = new Map<string, Expression>();

type Cursor = { readonly text: string; readonly tokens: readonly string[]; at: number };

const tokenPattern = /\s*(\d+\.?\d*(?:e[+-]?\d+)?|\p{L}[\p{L}\p{N}_]*|[-+*/^(),])/uy;

function tokensOf(text: string): string[] {
  const tokens: string[] = [];
  const source = text.trim();
  tokenPattern.lastIndex = 0;
  let read = 0;
  while (read < source.length) {
    const token = tokenPattern.exec(source)?.[1];
    if (token === undefined) throw new SyntaxError(`formula "${text}": cannot be read from "${source.slice(read)}"`);
    tokens.push(token);
    read = tokenPattern.lastIndex;
  }
  return tokens;
}

function readSum(cursor: Cursor): Expression {
  let left = readProduct(cursor);
  for (;;) {
    const operator = take(cursor, { "+": "add", "-": "subtract" });
    if (operator === undefined) return left;
    left = { kind: "operation", operator, left, right: readProduct(cursor) };
  }
}

function readProduct(cursor: Cursor): Expression {
  let left = readSigned(cursor);
  for (;;) {
    const operator = take(cursor, { "*": "multiply", "/": "divide" });
    if (operator === undefined) return left;
    left = { kind: "operation", operator, left, right: readSigned(cursor) };
  }
}

function readSigned(cursor: Cursor): Expression {
  if (cursor.tokens[cursor.at] !== "-") return readPower(cursor);
  cursor.at += 1;
  return { kind: "negate", of: readSigned(cursor) };
}

function readPower(cursor: Cursor): Expression {
  const base = readAtom(cursor);
  const operator = take(cursor, { "^": "power" });
  return operator === undefined ? base : { kind: "operation", operator, left: base, right: readSigned(cursor) };
}

function readAtom(cursor: Cursor): Expression {
  const token = cursor.tokens[cursor.at];
  if (token === undefined) throw unexpected(cursor);
  if (token === "(") return readBracketed(cursor);
  if (/^\d/.test(token)) {
    cursor.at += 1;
    return { kind: "number", value: Number(token) };
  }
  if (!/^\p{L}/u.test(token)) throw unexpected(cursor);
  cursor.at += 1;
  if (cursor.tokens[cursor.at] !== "(") return { kind: "symbol", name: token };
  const name = functionNames.find((candidate) => candidate === token);
  if (name === undefined) throw new SyntaxError(`formula "${cursor.text}": no function "${token}"`);
  return readCall(cursor, name);
}

function readBracketed(cursor: Cursor): Expression {
  cursor.at += 1;
  const inner = readSum(cursor);
  expect(cursor, ")");
  return inner;
}

function readCall(cursor: Cursor, name: FunctionName): Expression {
  expect(cursor, "(");
  const of = [readSum(cursor)];
  while (cursor.tokens[cursor.at] === ",") {
    cursor.at += 1;
    of.push(readSum(cursor));
  }
  expect(cursor, ")");
  return { kind: "call", name, of };
}

function take(cursor: Cursor, operators: Readonly<Record<string, Operator>>): Operator | undefined {
  const operator = operators[cursor.tokens[cursor.at] ?? ""];
  if (operator !== undefined) cursor.at += 1;
  return operator;
}

function expect(cursor: Cursor, token: string): void {
  if (cursor.tokens[cursor.at] !== token) throw unexpected(cursor);
  cursor.at += 1;
}

const unexpected = ({ text, tokens, at }: Cursor): SyntaxError =>
  new SyntaxError(`formula "${text}": did not expect "${tokens[at] ?? "the end"}"`);
