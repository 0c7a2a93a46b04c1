export type ReadQuantity = { ok: true; value: number } | { ok: false; why: string };

/**
 * A length as people type it, in integer micrometres: metres without a unit or with `m`, or `mm`, `cm`; a decimal
 * comma is taken as a point.
 */
export function readLengthUm(text: string): ReadQuantity {
  const read = readNumber(text, /^([+-]?\d*\.?\d+)(m|cm|mm)?$/);
  if (read === null) return { ok: false, why: "A length in metres, such as 2.438 or 2438 mm." };
  const perUnit = read.unit === "mm" ? 1000 : read.unit === "cm" ? 10_000 : 1_000_000;
  return { ok: true, value: Math.round(read.number * perUnit) };
}

/** An angle in integer thousandths of a degree, 0 ≤ angle < 360 000. */
export function readAngleMdeg(text: string): ReadQuantity {
  const read = readNumber(text, /^([+-]?\d*\.?\d+)(°|deg)?$/);
  if (read === null) return { ok: false, why: "An angle in degrees, such as 90 or 12.5." };
  const mdeg = Math.round(read.number * 1000) % 360_000;
  return { ok: true, value: mdeg < 0 ? mdeg + 360_000 : mdeg };
}

/** A pressure in integer pascals; kilopascals without a unit. */
export function readPressurePa(text: string): ReadQuantity {
  const read = readNumber(text, /^(\d*\.?\d+)(kPa|Pa)?$/i);
  if (read === null) return { ok: false, why: "A pressure in kPa, such as 2.4." };
  return { ok: true, value: Math.round(read.number * (read.unit?.toLowerCase() === "pa" ? 1 : 1000)) };
}

export const writeMetres = (um: number): string => (um / 1_000_000).toFixed(3);
export const writeDegrees = (mdeg: number): string => String(mdeg / 1000);
export const writeKpa = (pa: number): string => (pa / 1000).toFixed(2);

function readNumber(text: string, shape: RegExp): { number: number; unit: string | undefined } | null {
  const bare = text
    .replaceAll(/[\s\u2009\u00a0]/g, "")
    .replace("−", "-")
    .replace(",", ".");
  const found = shape.exec(bare);
  return found?.[1] === undefined ? null : { number: Number(found[1]), unit: found[2] };
}
