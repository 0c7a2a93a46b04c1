import { feetAndInches, mmPerInch, sixteenthsPerInch, type UnitSystem } from "@cornerway/schema";

const mmPerSixteenth = mmPerInch / sixteenthsPerInch;

/** The steps lengths on a drawing are written in, mm: a millimetre, or a sixteenth of an inch. */
export const drawnStepMm = (units: UnitSystem): number => (units === "US" ? mmPerSixteenth : 1);

/** A length as a drawing writes it: metres to the millimetre without unit; feet and inches. */
export const drawnLength = (lengthMm: number, units: UnitSystem): string =>
  units === "US" ? feetAndInches(lengthMm) : (Math.round(lengthMm) / 1000).toFixed(3).replace("-", "−");

/** A level, signed: +2.896; +9'-6". */
export function drawnLevel(heightMm: number, units: UnitSystem): string {
  const text = drawnLength(Math.abs(heightMm), units);
  if (Math.abs(heightMm) < drawnStepMm(units) / 2) return units === "US" ? "0'-0\"" : text;
  return `${heightMm > 0 ? "+" : "−"}${text}`;
}

/** A length in words and for the ear, to the centimetre or the sixteenth: 1.50 m; 4'-11 1/16". */
export const spokenLength = (lengthMm: number, units: UnitSystem): string =>
  units === "US" ? feetAndInches(lengthMm) : `${(Math.round(lengthMm / 10) / 100).toFixed(2).replace("-", "−")} m`;
