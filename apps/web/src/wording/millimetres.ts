import { mmPerInch, type UnitSystem } from "@cornerway/schema";

/** A small length as a gauge reads it: "2.6 mm"; "0.102 in". */
export const gaugeLength = (lengthUm: number, units: UnitSystem): string =>
  units === "US" ? `${(lengthUm / 1000 / mmPerInch).toFixed(3)} in` : `${Math.round(lengthUm / 10) / 100} mm`;
