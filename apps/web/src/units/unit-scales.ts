import { inchesPerFoot, mmPerInch, newtonsPerPound, type UnitSystem } from "@cornerway/schema";

export const quantities = ["length", "angle", "pressure", "force", "line load", "mass"] as const;
export type Quantity = (typeof quantities)[number];

/** Lengths have words of their own. */
export type Scaled = Exclude<Quantity, "length">;

const metresPerFoot = (mmPerInch * inchesPerFoot) / 1000;
const pascalsPerPsf = newtonsPerPound / metresPerFoot ** 2;
const newtonsPerMetrePerPlf = newtonsPerPound / metresPerFoot;
const gramsPerPound = 453.592_37;

/** Stored integers for one of each unit, by its sign in small letters. */
export const unitSizes: Record<Scaled, Readonly<Record<string, number>>> = {
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

type Shown = { unit: string; digits: number; example: string };
/** How each is shown, by the units people read in. */
export const scales: Record<Scaled, Record<UnitSystem, Shown>> = {
  angle: { SI: { unit: "°", digits: 3, example: "90" }, US: { unit: "°", digits: 3, example: "90" } },
  pressure: { SI: { unit: "kPa", digits: 2, example: "2.4" }, US: { unit: "psf", digits: 1, example: "50" } },
  force: { SI: { unit: "kN", digits: 3, example: "12.5" }, US: { unit: "kip", digits: 3, example: "2.8" } },
  "line load": {
    SI: { unit: "kN/m", digits: 3, example: "1.2" },
    US: { unit: "kip/ft", digits: 3, example: "0.08" },
  },
  mass: { SI: { unit: "kg", digits: 0, example: "95" }, US: { unit: "lb", digits: 0, example: "210" } },
};

/** Stored integers for one of a unit; NaN where the quantity has no such unit. */
export const perUnit = (quantity: Scaled, unit: string): number =>
  unitSizes[quantity][unit.toLowerCase()] ?? Number.NaN;
