import { feetAndInches, mmPerInch, newtonsPerPound, type UnitSystem } from "@cornerway/schema";

/** How the set writes its numbers: one system, nothing twice. */
export type Written = {
  /** Lengths on drawings and in schedules, without a unit: 2.438; 8'-0". */
  length: (mm: number) => string;
  /** A level, signed. */
  level: (mm: number) => string;
  /** Packing, gaps and plate sizes with their unit: 40 mm; 1 9/16". */
  small: (mm: number) => string;
  /** Forces without their unit. */
  force: (kn: number) => string;
  forceUnit: string;
  lengthUnit: string;
  /** Pressure with its unit. */
  pressure: (pa: number) => string;
  moment: (knm: number) => string;
  mass: (kg: number) => string;
  /** Strength of concrete and steel, with its unit. */
  stress: (mpa: number) => string;
  speed: (metresPerSecond: number) => string;
  /** Heights of the land, with their unit. */
  height: (metres: number) => string;
  /** Ground pressure, force over area, with its unit. */
  bearing: (kpa: number) => string;
};

const knPerKip = newtonsPerPound;
const mmPerFoot = mmPerInch * 12;
const paPerPsf = newtonsPerPound / (mmPerFoot / 1000) ** 2;
const kgPerPound = 0.45359237;
/** A mile is 5280 ft, exact. */
const metresPerSecondPerMph = (5280 * mmPerFoot) / 1000 / 3600;

export const written: Record<UnitSystem, Written> = {
  SI: {
    length: metres,
    level: (mm) => `${signOf(mm)}${metres(Math.abs(mm))}`,
    small: (mm) => `${fixed(mm, 1).replace(/\.0$/, "")} mm`,
    force: (kn) => fixed(kn, 1),
    forceUnit: "kN",
    lengthUnit: "m",
    pressure: (pa) => `${fixed(pa / 1000, 2)} kPa`,
    moment: (knm) => `${fixed(knm, 1)} kN m`,
    mass: (kg) => `${fixed(kg, 0)} kg`,
    stress: (mpa) => `${fixed(mpa, 1)} MPa`,
    speed: (metresPerSecond) => `${fixed(metresPerSecond, 1)} m/s`,
    height: (m) => `${fixed(m, 0)} m`,
    bearing: (kpa) => `${fixed(kpa, 1)} kPa`,
  },
  US: {
    length: feetAndInches,
    level: (mm) => `${signOf(mm)}${Math.abs(mm) < 1 ? "0'-0\"" : feetAndInches(Math.abs(mm))}`,
    small: feetAndInches,
    force: (kn) => fixed(kn / knPerKip, 2),
    forceUnit: "kip",
    lengthUnit: "ft-in",
    pressure: (pa) => `${fixed(pa / paPerPsf, 1)} psf`,
    moment: (knm) => `${fixed(knm / (knPerKip * (mmPerFoot / 1000)), 1)} kip-ft`,
    mass: (kg) => `${fixed(kg / kgPerPound, 0)} lb`,
    stress: (mpa) => `${fixed((mpa * mmPerInch ** 2) / newtonsPerPound, 0)} psi`,
    speed: (metresPerSecond) => `${fixed(metresPerSecond / metresPerSecondPerMph, 0)} mph`,
    height: (m) => `${fixed((m * 1000) / mmPerFoot, 0)} ft`,
    bearing: (kpa) => `${fixed((kpa * 1000) / paPerPsf, 0)} psf`,
  },
};

function metres(mm: number): string {
  return fixed(Math.round(mm) / 1000, 3);
}

const signOf = (mm: number): string => (Math.abs(mm) < 0.5 ? "" : mm > 0 ? "+" : "−");

/** A number with so many decimals, a true minus, and no minus before nothing. */
export function fixed(value: number, digits: number): string {
  const words = value.toFixed(digits);
  return (Number(words) === 0 ? (0).toFixed(digits) : words).replace("-", "−");
}
