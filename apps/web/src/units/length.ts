import { inchesPerFoot, mmPerInch, type UnitSystem } from "@cornerway/schema";
import { readFeet } from "./read-feet.ts";
import { readNumber } from "./read-number.ts";
import type { ReadQuantity } from "./read-quantity.ts";

const umPerMm = 1000;
const umPerMetre = 1_000_000;
/** Sixteenths of an inch are whole halves of a µm only when taken from inches in one step. */
const umPerInch = mmPerInch * umPerMm;
const umPerFoot = umPerInch * inchesPerFoot;

/**
 * A length as people type it, in integer µm, whatever units they read in. A number without a unit is metres (feet for
 * those who read feet); from one hundred up it is millimetres, since no part of a scheme lies a hundred metres off.
 */
export function readLengthUm(text: string, units: UnitSystem): ReadQuantity {
  const um = withMetricUnit(text) ?? fromFeet(text) ?? withoutUnit(text, units);
  return um === null ? { ok: false, why: whyNot[units] } : { ok: true, value: Math.round(um) + 0 };
}

const whyNot: Record<UnitSystem, string> = {
  SI: "A length, such as 2.438, 2438 mm or 8'-0\". In “1,613” the comma is the decimal mark, in “1,613 mm” it is not.",
  US: 'A length, such as 8\'-0 1/2", 96.5", 2438 mm or 2.438 m. A comma before three figures needs its unit.',
};

const fromFeet = (text: string): number | null => {
  const inches = readFeet(text);
  return inches === null ? null : inches * umPerInch;
};

function withMetricUnit(text: string): number | null {
  const [, digits, written = ""] = /^(.*?)\s*(mm|cm|m)$/i.exec(text.trim()) ?? [];
  const one = metricUnits.get(written.toLowerCase());
  if (digits === undefined || one === undefined) return null;
  const number = readNumber(digits, { groupsAtComma: one === umPerMm });
  return number === null ? null : number * one;
}

const metricUnits: ReadonlyMap<string, number> = new Map([
  ["mm", umPerMm],
  ["cm", 10 * umPerMm],
  ["m", umPerMetre],
]);

/** From here up a bare number is millimetres. */
const leastBareMm = 100;

function withoutUnit(text: string, units: UnitSystem): number | null {
  const number = readNumber(text);
  if (number === null || (units === "US" && /^[+-−]?\d{1,3},\d{3}$/.test(text.trim()))) return null;
  if (Math.abs(number) >= leastBareMm) return number * umPerMm;
  return number * (units === "US" ? umPerFoot : umPerMetre);
}
