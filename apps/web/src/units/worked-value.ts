import { inchesPerFoot, mmPerInch, newtonsPerPound, type UnitSystem } from "@cornerway/schema";
import { figure } from "../working/figure.ts";

/** What one of a unit of the calculations is in US units; a unit that is not here has no other form. */
type Customary = { readonly unit: string; readonly times: number };

const kip = 1000 * newtonsPerPound;
const foot = mmPerInch * inchesPerFoot;
const psi = newtonsPerPound / mmPerInch ** 2;
const psf = (newtonsPerPound * 1e6) / foot ** 2;

const customary: Readonly<Record<string, Customary>> = {
  N: { unit: "kip", times: 1 / kip },
  kN: { unit: "kip", times: 1000 / kip },
  "N/mm": { unit: "kip/ft", times: foot / kip },
  "kN/m": { unit: "kip/ft", times: foot / kip },
  "N·mm": { unit: "kip-ft", times: 1 / (kip * foot) },
  "kN·m": { unit: "kip-ft", times: 1e6 / (kip * foot) },
  MPa: { unit: "ksi", times: 1 / (1000 * psi) },
  "N/mm²": { unit: "ksi", times: 1 / (1000 * psi) },
  Pa: { unit: "psf", times: 1 / psf },
  kPa: { unit: "psf", times: 1000 / psf },
  mm: { unit: "in", times: 1 / mmPerInch },
  m: { unit: "ft", times: 1000 / foot },
  "mm²": { unit: "in²", times: 1 / mmPerInch ** 2 },
  "mm³": { unit: "in³", times: 1 / mmPerInch ** 3 },
  "mm⁴": { unit: "in⁴", times: 1 / mmPerInch ** 4 },
  "m²": { unit: "ft²", times: 1e6 / foot ** 2 },
  "m/s": { unit: "mph", times: 3.6 / 1.609344 },
  kg: { unit: "lb", times: 1 / 0.453_592_37 },
};

/** A value of a calculation with its unit, in the units a person reads. */
export function workedValue(value: number, unit: string, units: UnitSystem): string {
  const other = units === "US" ? customary[unit] : undefined;
  const [size, sign] = other === undefined ? [value, unit] : [value * other.times, other.unit];
  return sign === "1" ? figure(size) : `${figure(size)} ${sign}`;
}
