import type { CostBook, Mark, Premium, PremiumLine, Scheme } from "@cornerway/schema";
import { inOrder } from "../geometry/in-order.ts";
import { engineeredKinds } from "./engineered-kinds.ts";
import { plainStack } from "./plain-stack.ts";
import { pricedLine } from "./priced-line.ts";
import { quantities } from "./quantities.ts";
import { takeOff } from "./take-off.ts";

/**
 * What a scheme costs in structure above the same containers stacked plainly: quantities of its drawn elements times the
 * book's rates. Money in the book's currency, not rounded. `marks` are those of its assessment: one whose answer is not
 * known stands apart, without a price.
 */
export function premium(given: Scheme, book: CostBook, marks: readonly Mark[] = []): Premium {
  const scheme = inOrder(given);
  const plain = plainStack(scheme);
  const kinds = engineeredKinds(scheme);
  const taken = takeOff(scheme, plain);
  const lines = taken.lines.map((line) => pricedLine(line, kinds, book));
  return {
    currency: book.currency,
    lines,
    quantities: quantities(lines, scheme, plain),
    total: moneyOf(lines),
    forShow: [...Object.values(book.rates), ...Object.values(book.labour)].some(({ source }) => source === null),
    notPriced: taken.notKnown.map(({ elementId }) => elementId),
    units: byUnit(lines),
    marks: marks.map((mark) => ({ markId: mark.id, verdict: mark.verdict, money: ofMark(mark, lines) })),
  };
}

function byUnit(lines: readonly PremiumLine[]): Premium["units"] {
  const ids = [...new Set(lines.map(({ containerId }) => containerId))];
  return ids.map((containerId) => ({
    containerId,
    money: moneyOf(lines.filter((line) => line.containerId === containerId)),
  }));
}

/** What is drawn for the elements a mark concerns; null where what it needs is the engineer's to say, or nobody's. */
function ofMark({ verdict, elements }: Mark, lines: readonly PremiumLine[]): number | null {
  if (verdict === "needs the engineer" || verdict === "does not work") return null;
  return moneyOf(lines.filter(({ elementId }) => elements.includes(elementId)));
}

const moneyOf = (lines: readonly PremiumLine[]): number => lines.reduce((sum, { money }) => sum + money, 0);
