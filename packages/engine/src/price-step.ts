import type { Verdict } from "@cornerway/schema";
import type { ChartRequest } from "./chart/chart.ts";
import { touchMm } from "./geometry/tolerances.ts";

/** What a move costs, in the order of price; classes 0 to 5 of common practice, no published source. */
export const priceSteps = ["free", "trim", "local steel", "frame and footing", "whole system", "do not"] as const;
export type PriceStep = (typeof priceSteps)[number];

/** A step, or the least it can be: what the engineer must settle is never cheaper than a frame of its own. */
export type Priced = { readonly step: PriceStep; readonly atLeast: boolean };

/** What is drawn for an opening. `sheet` is what lies between the protected members of its face, mm. */
export type OpeningSteel = {
  readonly sillMm: number;
  readonly headMm: number;
  readonly widthMm: number;
  readonly sheet: { readonly u0: number; readonly u1: number; readonly v0: number; readonly v1: number };
};

/**
 * The price step of an opening with its verdict; undefined where nothing is checked, which has no price. A frame from rail to
 * rail stands on both, so that it is a frame with its footing and no mere trim of a hole.
 */
export function openingPriceStep(verdict: Verdict, opening: OpeningSteel): Priced | undefined {
  switch (verdict) {
    case "works as built":
      return { step: "trim", atLeast: false }; // with bare edges: a frame would be steel
    case "works with steel":
      return { step: isRailToRail(opening) ? "frame and footing" : "local steel", atLeast: false };
    case "needs the engineer":
      return { step: isWholeSide(opening) ? "whole system" : "frame and footing", atLeast: true };
    case "does not work":
      return { step: "do not", atLeast: false };
    case "not checked":
      return undefined;
  }
}

/** What is drawn for a place and width of a chart. */
export const chartSteel = (
  { sillUm, heightUm }: Pick<ChartRequest, "sillUm" | "heightUm">,
  sheet: OpeningSteel["sheet"],
  widthMm: number,
): OpeningSteel => ({ sillMm: sillUm / 1000, headMm: (sillUm + heightUm) / 1000, widthMm, sheet });

/** The one of two steps that costs more. */
export const dearerStep = (a: PriceStep, b: PriceStep): PriceStep =>
  priceSteps.indexOf(a) >= priceSteps.indexOf(b) ? a : b;

const isRailToRail = ({ sillMm, headMm, sheet }: OpeningSteel): boolean =>
  sillMm <= sheet.v0 + touchMm && headMm >= sheet.v1 - touchMm;

const isWholeSide = (opening: OpeningSteel): boolean =>
  isRailToRail(opening) && opening.widthMm >= opening.sheet.u1 - opening.sheet.u0 - touchMm;
