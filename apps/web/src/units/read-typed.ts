import type { UnitSystem } from "@cornerway/schema";
import { readLengthUm } from "./length.ts";
import { readNumber } from "./read-number.ts";
import type { ReadQuantity } from "./read-quantity.ts";
import { scales, unitSizes, type Quantity, type Scaled } from "./unit-scales.ts";

/** What was typed as the integer the scheme stores: µm, thousandths of a degree, Pa, N, N/m, g. */
export function readQuantity(quantity: Quantity, text: string, units: UnitSystem): ReadQuantity {
  if (quantity === "length") return readLengthUm(text, units);
  const { unit, example } = scales[quantity][units];
  const read = readWithUnit(text, quantity, unit);
  if (read === null) return { ok: false, why: `${spoken[quantity]}, such as ${example} or ${example} ${unit}.` };
  if (quantity === "angle") return { ok: true, value: withinTurn(Math.round(read)) };
  if (read < 0 && neverBelowZero.has(quantity))
    return { ok: false, why: `${spoken[quantity]} is never below nothing.` };
  return { ok: true, value: Math.round(read) + 0 };
}

const spoken: Record<Scaled, string> = {
  angle: "An angle",
  pressure: "A pressure",
  force: "A force",
  "line load": "A load on a line",
  mass: "A mass",
};

const neverBelowZero: ReadonlySet<Quantity> = new Set(["pressure", "mass"]);

/** Nobody writes thousandths of these, so a comma before three figures stands before a group. */
const small = new Set(["pa", "psf", "n", "lb", "lbf", "n/m", "plf", "lb/ft", "g", "kg"]);

function readWithUnit(text: string, quantity: Scaled, bare: string): number | null {
  const [, digits = "", written = ""] = /^([+\-−]?[\d.,\s]*\d[.,]?)\s*(\D*)$/.exec(text.trim()) ?? [];
  const unit = (written === "" ? bare : written).toLowerCase();
  const one = unitSizes[quantity][unit];
  const number = readNumber(digits, { groupsAtComma: written !== "" && small.has(unit) });
  return one === undefined || number === null ? null : number * one;
}

const withinTurn = (mdeg: number): number => ((mdeg % 360_000) + 360_000) % 360_000;
