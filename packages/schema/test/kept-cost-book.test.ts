import { expect, it } from "vitest";
import { CostBook, demoCostBook, KeptCostBook, withEveryRate } from "../src/index.ts";

const { "pad concrete, m³": _later, ...earlierRates } = demoCostBook.rates;
const earlier = { ...demoCostBook, rates: { ...earlierRates, "shop hour": { amount: 99, source: "Offer 4" } } };

it("a book kept before a rate was known is read, and the rate it does not name is for show", () => {
  const read = withEveryRate(KeptCostBook.parse(earlier));
  expect(read.rates["shop hour"]).toEqual({ amount: 99, source: "Offer 4" });
  expect(read.rates["pad concrete, m³"]).toEqual({ amount: 450, source: null });
  expect(CostBook.parse(read)).toEqual(read);
});

it("a book that is written now names every rate", () => {
  expect(CostBook.safeParse(earlier).success).toBe(false);
});
