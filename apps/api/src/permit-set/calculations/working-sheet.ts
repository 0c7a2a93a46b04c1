import type { CheckWorking } from "@cornerway/schema";
import type { CalculationFlow } from "../paper/calculation-flow.ts";
import { row, setFormula, setSymbol, setWords, type Setting } from "../paper/formula.ts";
import { pt, type Block, type Ink } from "../paper/ink.ts";
import { box, line, rule, text, type Box } from "../paper/shapes.ts";
import { wrap } from "../paper/wrap.ts";
import { certaintyWords, clauseWords, plainSymbol, significant, withUnit } from "./words.ts";

/** Indices at 0.68 of it are still 7 pt. */
const usualSize = 10.4;
const smallSize = 8.4;
const clauseShare = 0.26;

/**
 * Checks in full: inputs with their source, then formula, values put in and result, the clause at the right, and the bar.
 * A part that was worked out before is named by its number and not repeated.
 */
export class WorkingSheets {
  readonly #flow: CalculationFlow;
  readonly #shown = new Map<string, string>();

  constructor(flow: CalculationFlow) {
    this.#flow = flow;
  }

  lay(working: CheckWorking, number: string): void {
    const key = JSON.stringify(working);
    const before = this.#shown.get(key);
    if (before !== undefined) {
      this.#flow.paragraph(`${number}  ${working.title}: as worked out at ${before}.`, { size: 8.4 });
      return;
    }
    this.#shown.set(key, number);
    layOne(this.#flow, working, number);
    for (const [index, part] of working.parts.entries()) this.lay(part, `${number}.${index + 1}`);
  }
}

function layOne(flow: CalculationFlow, working: CheckWorking, at: string): void {
  const { width } = flow.area;
  const main = width * (1 - clauseShare) - 14;
  flow.block(20 + titleLines(working, main).length * 14, (place) => headBlock(working, at, place, main));
  layInputs(flow, working);
  for (const step of working.steps) layStep(flow, step, main);
  for (const note of working.notes) flow.paragraph(note, { size: 8.2 });
  flow.block(24, (place) => resultBlock(working, place));
}

const titleLines = ({ title }: CheckWorking, width: number): string[] => wrap(title, "prose", 11, width - 30);

function headBlock(working: CheckWorking, at: string, { x, y, width }: Box, main: number): Block {
  const aside = wrap(clauseWords(working.clause), "lettering", 7.8, width * clauseShare);
  return {
    role: "H3",
    inks: [
      rule(x, x + width, y + 3, "fine"),
      text(x, y + 16, at, { face: "lettering strong", size: 7.6 }),
      ...titleLines(working, main).map((words, index) =>
        text(x + 30, y + 16 + index * 14, words, { face: "prose", size: 11 }),
      ),
      ...aside
        .slice(0, 2)
        .map((words, index) =>
          text(x + width * (1 - clauseShare), y + 14 + index * 9.4, words, { size: 7.8, tone: "graphite" }),
        ),
    ],
  };
}

/** Symbols in a table of their own: what, how much, from where. */
function layInputs(flow: CalculationFlow, { symbols, title }: CheckWorking): void {
  if (symbols.length === 0) return;
  flow.table({
    name: `Inputs of ${title}`,
    size: 7.6,
    columns: [
      { heading: "Symbol", share: 8, face: "prose" },
      { heading: "Value", share: 12, right: true },
      { heading: "What", share: 34 },
      { heading: "From", share: 34 },
    ],
    rows: symbols.map(({ symbol, value, unit, meaning, source, certainty }) => [
      plainSymbol(symbol),
      withUnit(value, unit),
      meaning,
      `${source ?? ""}${source === undefined ? "" : ", "}${certaintyWords[certainty]}`,
    ]),
  });
}

type Step = CheckWorking["steps"][number];

/** A step as pieces that may go on over lines: symbol = formula, = values, = result. */
function stepSettings(step: Step, size: number): Setting[] {
  if (step.kind === "condition") {
    const relation = { "<=": "≤", "<": "<", ">=": "≥", ">": ">" }[step.relation];
    const turned = step.holds ? "holds" : "does not hold";
    return [
      row(setFormula(step.left, size), setWords(` ${relation} `, size), setFormula(step.right, size)),
      setWords(`:  ${significant(step.leftValue)} ${relation} ${significant(step.rightValue)} ${turned}`, size),
    ];
  }
  const result = setWords(`\u2009=\u2009${withUnit(step.result, step.unit)}`, size);
  const formula = row(setSymbol(step.symbol, size), setWords("\u2009=\u2009", size), setFormula(step.formula, size));
  if (step.substituted === step.formula) return [formula, result];
  return [formula, row(setWords("\u2009=\u2009", size), setFormula(step.substituted, size)), result];
}

const indent = 30;
const further = 22;

/** At its usual size; where a piece is too wide smaller; where it is still too wide as it would be typed, over lines. */
function layStep(flow: CalculationFlow, step: Step, main: number): void {
  const room = main - indent - further;
  const settings = [usualSize, smallSize].map((size) => stepSettings(step, size));
  const fit = settings.find((parts) => parts.every(({ width }) => width <= room));
  if (fit === undefined) layTyped(flow, step, room);
  else laySet(flow, fit, main);
}

function laySet(flow: CalculationFlow, parts: readonly Setting[], main: number): void {
  const lines: Setting[] = [];
  for (const part of parts) {
    const last = lines.at(-1);
    if (last !== undefined && last.width + part.width <= main - indent) lines[lines.length - 1] = row(last, part);
    else lines.push(part);
  }
  for (const [index, setting] of lines.entries()) {
    const height = setting.rise + setting.fall + 4.5;
    flow.block(height, ({ x, y }) => ({
      role: "Formula",
      inks: setting.ink(x + indent + (index === 0 ? 0 : further), y + setting.rise + 2),
    }));
  }
}

function layTyped(flow: CalculationFlow, step: Step, room: number): void {
  const words =
    step.kind === "condition"
      ? `${step.left} ${step.relation} ${step.right}: ${step.holds ? "holds" : "does not hold"}`
      : `${step.symbol} = ${step.formula} = ${step.substituted} = ${withUnit(step.result, step.unit)}`;
  for (const line of wrap(words, "prose", 9, room))
    flow.block(12.5, ({ x, y }) => ({
      role: "Formula",
      inks: [text(x + indent, y + 9, line, { face: "prose", size: 9 })],
    }));
}

/** The bar: a length on a ruled scale with the limit as a heavy tick at 1.00; past it the ink goes on hatched, up to 1.30. */
function resultBlock({ utilisation, result, limit, certainty }: CheckWorking, { x, y, width }: Box): Block {
  const words = `${plainSymbol(result.symbol)} = ${withUnit(result.value, result.unit)}${
    limit === undefined ? "" : ` against ${plainSymbol(limit.symbol)} = ${withUnit(limit.value, limit.unit)}`
  } · ${certaintyWords[certainty]}`;
  const inks: Ink[] = [text(x + 30, y + 12, words, { size: 7.8, tone: "graphite" })];
  if (utilisation === undefined) return { role: "P", inks };
  const from = x + width * (1 - clauseShare) - 60;
  return {
    role: "P",
    inks: [
      ...inks,
      ...bar(utilisation, from, y + 4, x + width - from - 34),
      text(x + width, y + 13, utilisation.toFixed(2), { size: 10, face: "lettering strong", anchor: "end" }),
    ],
  };
}

const most = 1.3;

export function bar(utilisation: number, x: number, y: number, width: number): Ink[] {
  const one = width / most;
  const full = Math.min(utilisation, 1) * one;
  const over = Math.min(Math.max(utilisation - 1, 0), most - 1) * one;
  const ticks = [0, 0.25, 0.5, 0.75].map((share) =>
    line({ x: x + share * one, y: y + 8 }, { x: x + share * one, y: y + 10.5 }, "fine"),
  );
  return [
    box({ x, y: y + 1.6, width: pt(full), height: 6 }, { fill: "ink" }),
    ...(over > 0 ? [box({ x: x + one, y: y + 1.6, width: pt(over), height: 6 }, { pen: "edge", fill: "band" })] : []),
    rule(x, x + one, y + 8, "edge"),
    ...ticks,
    line({ x: x + one, y: y - 1 }, { x: x + one, y: y + 10.5 }, "border"),
  ];
}
