import type { UnitSystem } from "@cornerway/schema";
import { printLengthUm } from "./print-length.ts";
import { perUnit, scales, type Quantity } from "./unit-scales.ts";

/** The unit a field of this quantity is in, and a number without a unit is taken in. */
export const unitOf = (quantity: Quantity, units: UnitSystem): string =>
  quantity === "length" ? (units === "US" ? "ft-in" : "m") : scales[quantity][units].unit;

/** A stored integer as a field shows it, without its unit. */
export function printQuantity(quantity: Quantity, value: number, units: UnitSystem): string {
  if (quantity === "length") return printLengthUm(value, units);
  if (quantity === "angle") return String(value / 1000);
  const { unit, digits } = scales[quantity][units];
  return (value / perUnit(quantity, unit)).toFixed(digits);
}
