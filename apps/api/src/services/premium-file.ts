import {
  cautions,
  standsApart,
  type CostBook,
  type PremiumDifference,
  type PremiumLine,
  type RateName,
  type RevisionPremium,
  type UnitSystem,
} from "@cornerway/schema";
import { csvOf, type Cell } from "../description/csv.ts";

const metresPerFoot = 0.3048;
const kgPerPound = 0.453_592_37;

/** The line items of a revision's premium as a table, then its total, what stands apart, and the cautions. */
export function premiumFile({ premium }: RevisionPremium, book: CostBook, units: UnitSystem): string {
  const { currency, lines, total, notPriced, marks, forShow } = premium;
  const rate = (name: string) => [name, `${name}_${currency}`, `source of ${name}`];
  const head = [
    ...["element", "container", "item", "section", ...quantityHeads(units), "done in", "time_h"],
    ...[...rate("hourly rate"), ...rate("piece rate"), `money_${currency}`, "for show"],
  ];
  const rows = lines.map((line): Cell[] => [
    ...[line.elementId, line.containerId, line.item, line.section, ...quantityCells(line, units), line.where],
    ...[to(line.hours, 3), ...rateCells(line.hoursAt, book), ...rateCells(line.piecesAt, book)],
    ...[cents(line.money), forShowWord(line.forShow)],
  ]);
  const row = rowUnder(head);
  const apart = marks.filter(({ money }) => money === null);
  return csvOf(head, [
    ...rows,
    row({ item: "total of what is drawn", [`money_${currency}`]: cents(total), "for show": forShowWord(forShow) }),
    ...notPriced.map((element) => row({ element, item: "not priced, not in the total: its section is not known" })),
    ...apart.map(({ markId, verdict }) => row({ element: markId, item: `stands apart, not priced: ${verdict}` })),
    ...(standsApart(premium) ? [row({ item: "The total does not hold what stands apart." })] : []),
    ...closing(forShow).map((element) => row({ element })),
  ]);
}

/** The lines that make up the difference between two revisions, as a table. */
export function differenceFile(difference: PremiumDifference, units: UnitSystem): string {
  const { currency, before, after, lines, totalBefore, totalAfter, forShow } = difference;
  const quantities = (letter: string) => quantityHeads(units).map((name) => `${name} in ${letter}`);
  const money = `money_${currency}`;
  const head = ["element", "item", "section", ...quantities(before), ...quantities(after), money, "for show"];
  const rows = lines.map((line): Cell[] => [
    ...[line.elementId, line.item, line.section],
    ...[...quantityCells(line.before, units), ...quantityCells(line.after, units)],
    ...[cents(line.money), forShowWord((line.after ?? line.before)?.forShow ?? false)],
  ]);
  const row = rowUnder(head);
  const sum = (item: string, amount: number) => row({ item, [money]: cents(amount), "for show": forShowWord(forShow) });
  return csvOf(head, [
    ...rows,
    ...[sum(`total in ${before}`, totalBefore), sum(`total in ${after}`, totalAfter)],
    sum("difference", totalAfter - totalBefore),
    ...closing(forShow).map((element) => row({ element })),
  ]);
}

const quantityHeads = (units: UnitSystem): string[] =>
  units === "US" ? ["length_ft", "mass_lb", "volume_yd3", "count"] : ["length_m", "mass_kg", "volume_m3", "count"];

function quantityCells(line: PremiumLine | null, units: UnitSystem): Cell[] {
  if (line === null) return [null, null, null, null];
  const { unit, quantity } = line;
  const [metres, kilograms, cubicMetres] =
    units === "US" ? [metresPerFoot, kgPerPound, metresPerFoot ** 3 * 27] : [1, 1, 1];
  return [
    unit === "m" ? to(quantity / metres, 3) : null,
    unit === "kg" ? to(quantity / kilograms, 2) : null,
    unit === "m³" ? to(quantity / cubicMetres, 3) : null,
    unit === "each" ? quantity : null,
  ];
}

function rateCells(name: RateName | null, { rates }: CostBook): Cell[] {
  if (name === null) return [null, null, null];
  const { amount, source } = rates[name];
  return [name, amount, source ?? "none: for show"];
}

const closing = (forShow: boolean): string[] => [
  ...(forShow ? ["Rates without a source are for show: no offer and no estimate rests on them."] : []),
  "Counted over the same containers stacked corner on corner on pads.",
  ...cautions,
];

/** A row that fills only some columns, by their heads. */
const rowUnder =
  (head: readonly string[]) =>
  (cells: Readonly<Record<string, Cell>>): Cell[] =>
    head.map((name) => cells[name] ?? null);

const forShowWord = (forShow: boolean): string => (forShow ? "for show" : "");

const to = (value: number, digits: number): number => Math.round(value * 10 ** digits) / 10 ** digits;
const cents = (money: number): number => to(money, 2);
