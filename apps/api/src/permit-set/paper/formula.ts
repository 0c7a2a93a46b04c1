import { parseExpression, type Expression } from "@cornerway/engine";
import { pt, type Ink } from "./ink.ts";
import { path, text } from "./shapes.ts";
import { widthOf } from "./typefaces.ts";

/** A formula set in two dimensions: how wide, how far above and below its baseline, and its ink from a corner. */
export type Setting = { width: number; rise: number; fall: number; ink: (x: number, y: number) => Ink[] };

/** Sets an expression as it is written by hand: fractions, roots, exponents, indices. */
export const setFormula = (source: string, size: number): Setting => set(parseExpression(source), size);

/** Words and signs between formulas. */
export const setWords = (words: string, size: number): Setting => ({
  width: widthOf(words, "prose", size),
  rise: size * 0.72,
  fall: size * 0.24,
  ink: (x, y) => [text(x, y, words, { face: "prose", size })],
});

export function row(...parts: readonly Setting[]): Setting {
  return {
    width: parts.reduce((sum, { width }) => sum + width, 0),
    rise: Math.max(0, ...parts.map(({ rise }) => rise)),
    fall: Math.max(0, ...parts.map(({ fall }) => fall)),
    ink: (x, y) => {
      let at = x;
      return parts.flatMap((part) => {
        const inks = part.ink(at, y);
        at += part.width;
        return inks;
      });
    },
  };
}

function set(expression: Expression, size: number): Setting {
  switch (expression.kind) {
    case "number":
      return setWords(figure(expression.value), size);
    case "symbol":
      return setSymbol(expression.name, size);
    case "negate":
      return row(setWords("−", size), within(expression.of, size, 2));
    case "call":
      return call(expression, size);
    case "operation":
      return operation(expression, size);
  }
}

/** A number with a narrow space between its thousands. */
export const figure = (value: number): string => {
  const [whole = "", rest] = String(value).split(".");
  if (String(value).includes("e")) return powerOfTen(String(value));
  const grouped = whole.replace(/\B(?=(\d{3})+(?!\d))/g, whole.replace("-", "").length > 4 ? "\u2009" : "");
  return `${grouped}${rest === undefined ? "" : `.${rest}`}`.replace("-", "−");
};

const superscripts = "⁰¹²³⁴⁵⁶⁷⁸⁹";

/** 1.04e-16 as it is written: 1.04·10⁻¹⁶. */
function powerOfTen(typed: string): string {
  const [digits = "", power = ""] = typed.split("e");
  const raisedPower = Array.from(power.replace("+", ""), (sign) =>
    sign === "-" ? "⁻" : (superscripts[Number(sign)] ?? sign),
  );
  return `${digits.replace("-", "−")}·10${raisedPower.join("")}`;
}

/** `F_y` with its index below the line. */
export function setSymbol(name: string, size: number): Setting {
  const [base = name, ...indices] = name.split("_");
  const main = setWords(base, size);
  if (indices.length === 0) return main;
  const index = setWords(indices.join(" "), size * 0.68);
  return {
    width: main.width + index.width + 0.6,
    rise: main.rise,
    fall: size * 0.4,
    ink: (x, y) => [...main.ink(x, y), ...index.ink(x + main.width + 0.3, y + size * 0.2)],
  };
}

function operation({ operator, left, right }: Extract<Expression, { kind: "operation" }>, size: number): Setting {
  switch (operator) {
    case "add":
      return row(set(left, size), setWords(" + ", size), within(right, size, 1));
    case "subtract":
      return row(set(left, size), setWords(" − ", size), within(right, size, 2));
    case "multiply":
      return row(
        within(left, size, 2),
        setWords(numeric(right) ? " × " : "\u2009·\u2009", size),
        within(right, size, 2),
      );
    case "divide":
      return fraction(set(left, size), set(right, size), size);
    case "power":
      return raised(within(left, size, 3), set(right, size * 0.7), size);
  }
}

const numeric = (expression: Expression): boolean =>
  expression.kind === "number" ||
  (expression.kind === "operation" && expression.operator !== "divide" && numeric(expression.left));

/** How tightly an expression holds together: sums 1, products 2, the rest 4. A fraction needs no brackets in a product. */
function tightness(expression: Expression): number {
  if (expression.kind === "negate") return 1.5;
  if (expression.kind !== "operation") return 4;
  return { add: 1, subtract: 1, multiply: 2.5, divide: 2.7, power: 3.5 }[expression.operator];
}

const within = (expression: Expression, size: number, least: number): Setting =>
  tightness(expression) < least + (least === 1 ? 0 : 0.1)
    ? bracketed(set(expression, size), size)
    : set(expression, size);

function bracketed(inner: Setting, size: number): Setting {
  const tall = inner.rise + inner.fall > size * 1.3;
  if (!tall) return row(setWords("(", size), inner, setWords(")", size));
  const wide = size * 0.3;
  return {
    width: inner.width + 2 * wide,
    rise: inner.rise + 1,
    fall: inner.fall + 1,
    ink: (x, y) => {
      const [top, foot] = [y - inner.rise - 1, y + inner.fall + 1];
      const bow = (at: number, out: number) =>
        `M${pt(at + out)} ${pt(top)}Q${pt(at - out)} ${pt((top + foot) / 2)} ${pt(at + out)} ${pt(foot)}`;
      return [
        path(bow(x + wide / 2, wide * 0.3) + bow(x + wide * 1.5 + inner.width, -wide * 0.3), { pen: "fine" }),
        ...inner.ink(x + wide, y),
      ];
    },
  };
}

function fraction(over: Setting, under: Setting, size: number): Setting {
  const width = Math.max(over.width, under.width) + size * 0.4;
  const axis = size * 0.27;
  const gap = size * 0.16;
  return {
    width: width + 2,
    rise: axis + gap + over.rise + over.fall,
    fall: under.rise + under.fall + gap - axis,
    ink: (x, y) => [
      ...over.ink(x + 1 + (width - over.width) / 2, y - axis - gap - over.fall),
      path(`M${pt(x + 1)} ${pt(y - axis)}H${pt(x + 1 + width)}`, { pen: "fine" }),
      ...under.ink(x + 1 + (width - under.width) / 2, y - axis + gap + under.rise),
    ],
  };
}

function raised(base: Setting, exponent: Setting, size: number): Setting {
  const up = base.rise - size * 0.3;
  return {
    width: base.width + exponent.width + 0.5,
    rise: up + exponent.rise,
    fall: base.fall,
    ink: (x, y) => [...base.ink(x, y), ...exponent.ink(x + base.width + 0.5, y - up)],
  };
}

function call({ name, of }: Extract<Expression, { kind: "call" }>, size: number): Setting {
  const parts = of.flatMap((each, at) => (at === 0 ? [set(each, size)] : [setWords(", ", size), set(each, size)]));
  if (name === "sqrt" || name === "cbrt") return root(row(...parts), size, name === "cbrt");
  if (name === "abs") return row(setWords("|", size), ...parts, setWords("|", size));
  return row(setWords(name, size), bracketed(row(...parts), size));
}

function root(inner: Setting, size: number, cubic: boolean): Setting {
  const wide = size * 0.62;
  return {
    width: inner.width + wide + 2,
    rise: inner.rise + size * 0.18,
    fall: inner.fall,
    ink: (x, y) => {
      const [top, foot] = [y - inner.rise - size * 0.14, y + inner.fall];
      const d = `M${pt(x + 0.5)} ${pt(y - size * 0.2)}l${pt(wide * 0.25)} ${pt(-size * 0.1)}L${pt(x + wide * 0.55)} ${pt(foot)}L${pt(x + wide * 0.95)} ${pt(top)}H${pt(x + wide + inner.width + 1)}`;
      return [
        path(d, { pen: "fine" }),
        ...(cubic ? [text(x, y - size * 0.45, "3", { face: "prose", size: size * 0.55 })] : []),
        ...inner.ink(x + wide, y),
      ];
    },
  };
}
