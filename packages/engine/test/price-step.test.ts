import { verdicts } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { dearerStep, openingPriceStep, priceSteps, type OpeningSteel } from "../src/price-step.ts";

// Price classes 0 to 5 by common practice, no published source: free, trim, local steel, frame and footing, whole system, do not.

const sheet = { u0: 160, u1: 12_032, v0: 174.5, v1: 2830 };
const door: OpeningSteel = { sillMm: 180, headMm: 2380, widthMm: 1000, sheet };
const railToRail: OpeningSteel = { ...door, sillMm: 174.5, headMm: 2830 };

describe("the price step of an opening", () => {
  it("is local steel for a framed door that works, a frame and its footing from rail to rail", () => {
    expect(openingPriceStep("works with steel", door)).toEqual({ step: "local steel", atLeast: false });
    expect(openingPriceStep("works with steel", railToRail)).toEqual({ step: "frame and footing", atLeast: false });
  });

  it("is trim for a bare hole that works as built", () => {
    expect(openingPriceStep("works as built", door)?.step).toBe("trim");
  });

  it("is only a least price where the engineer decides: a frame, and for a whole side the whole system", () => {
    expect(openingPriceStep("needs the engineer", door)).toEqual({ step: "frame and footing", atLeast: true });
    const side = { ...railToRail, widthMm: sheet.u1 - sheet.u0 };
    expect(openingPriceStep("needs the engineer", side)).toEqual({ step: "whole system", atLeast: true });
  });

  it("is do not where it does not work, and nothing where nothing is checked", () => {
    expect(openingPriceStep("does not work", door)?.step).toBe("do not");
    expect(openingPriceStep("not checked", door)).toBeUndefined();
  });

  it("never falls as the verdict gets worse, whatever is drawn", () => {
    const ranked = verdicts.filter((verdict) => verdict !== "not checked");
    const order = ["works as built", "works with steel", "needs the engineer", "does not work"] as const;
    expect([...ranked].toSorted()).toEqual([...order].toSorted());
    for (const opening of [door, railToRail])
      order.slice(1).forEach((verdict, n) => {
        const [better, worse] = [openingPriceStep(order[n] ?? verdict, opening), openingPriceStep(verdict, opening)];
        if (better === undefined || worse === undefined) throw new Error("it is priced");
        expect(dearerStep(better.step, worse.step)).toBe(worse.step);
      });
  });

  it("knows six steps, cheapest first", () => {
    expect(priceSteps).toHaveLength(6);
    expect(dearerStep("free", "do not")).toBe("do not");
  });
});
