import { inchesPerFoot, mmPerInch, newtonsPerPound, type UnitSystem } from "@cornerway/schema";
import { printLengthUm, readLengthUm } from "./length.ts";
import { readNumber } from "./read-number.ts";
import type { ReadQuantity } from "./read-quantity.ts";

export const quantities = ["length", "angle", "pressure", "force", "line load", "mass"] as const;
export type Quantity = (typeof quantities)[number];

/** The unit a field of this quantity is in, and a number without a unit is taken in. */
export const unitOf = (quantity: Quantity, units: UnitSystem): string =>
  quantity === "length" ? (units === "US" ? "ft-in" : "m") : scales[quantity][units].unit;

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

/** A stored integer as a field shows it, without its unit. */
export function printQuantity(quantity: Quantity, value: number, units: UnitSystem): string {
  if (quantity === "length") return printLengthUm(value, units);
  if (quantity === "angle") return String(value / 1000);
  const { unit, digits } = scales[quantity][units];
  return (value / perUnit(quantity, unit)).toFixed(digits);
}

type Scaled = Exclude<Quantity, "length">;

const metresPerFoot = (mmPerInch * inchesPerFoot) / 1000;
const pascalsPerPsf = newtonsPerPound / metresPerFoot ** 2;
const newtonsPerMetrePerPlf = newtonsPerPound / metresPerFoot;
const gramsPerPound = 453.592_37;

/** Stored integers for one of each unit, by its sign in small letters. */
const known: Record<Scaled, Readonly<Record<string, number>>> = {
  angle: { "°": 1000, deg: 1000 },
  pressure: { pa: 1, kpa: 1000, psf: pascalsPerPsf, ksf: 1000 * pascalsPerPsf },
  force: {
    n: 1,
    kn: 1000,
    lb: newtonsPerPound,
    lbf: newtonsPerPound,
    kip: 1000 * newtonsPerPound,
    kips: 1000 * newtonsPerPound,
  },
  "line load": {
    "n/m": 1,
    "kn/m": 1000,
    plf: newtonsPerMetrePerPlf,
    "lb/ft": newtonsPerMetrePerPlf,
    klf: 1000 * newtonsPerMetrePerPlf,
    "kip/ft": 1000 * newtonsPerMetrePerPlf,
  },
  mass: { g: 1, kg: 1000, t: 1_000_000, lb: gramsPerPound },
};

/** Nobody writes thousandths of these, so a comma before three figures stands before a group. */
const small = new Set(["pa", "psf", "n", "lb", "lbf", "n/m", "plf", "lb/ft", "g", "kg"]);

type Shown = { unit: string; digits: number; example: string };
const scales: Record<Scaled, Record<UnitSystem, Shown>> = {
  angle: { SI: { unit: "°", digits: 3, example: "90" }, US: { unit: "°", digits: 3, example: "90" } },
  pressure: { SI: { unit: "kPa", digits: 2, example: "2.4" }, US: { unit: "psf", digits: 1, example: "50" } },
  force: { SI: { unit: "kN", digits: 3, example: "12.5" }, US: { unit: "kip", digits: 3, example: "2.8" } },
  "line load": {
    SI: { unit: "kN/m", digits: 3, example: "1.2" },
    US: { unit: "kip/ft", digits: 3, example: "0.08" },
  },
  mass: { SI: { unit: "kg", digits: 0, example: "95" }, US: { unit: "lb", digits: 0, example: "210" } },
};

const spoken: Record<Scaled, string> = {
  angle: "An angle",
  pressure: "A pressure",
  force: "A force",
  "line load": "A load on a line",
  mass: "A mass",
};

const neverBelowZero: ReadonlySet<Quantity> = new Set(["pressure", "mass"]);

const perUnit = (quantity: Scaled, unit: string): number => known[quantity][unit.toLowerCase()] ?? Number.NaN;

function readWithUnit(text: string, quantity: Scaled, bare: string): number | null {
  const [, digits = "", written = ""] = /^([+\-−]?[\d.,\s]*\d[.,]?)\s*(\D*)$/.exec(text.trim()) ?? [];
  const unit = (written === "" ? bare : written).toLowerCase();
  const one = known[quantity][unit];
  const number = readNumber(digits, { groupsAtComma: written !== "" && small.has(unit) });
  return one === undefined || number === null ? null : number * one;
}

const withinTurn = (mdeg: number): number => ((mdeg % 360_000) + 360_000) % 360_000;
