import { feetAndInches, type UnitSystem } from "@cornerway/schema";

const umPerMm = 1000;
const umPerMetre = 1_000_000;

/** A length as a field shows it: metres to the millimetre; feet and inches to the sixteenth. */
export const printLengthUm = (um: number, units: UnitSystem): string =>
  units === "US"
    ? feetAndInches(um / umPerMm).replace("−", "-")
    : (um / umPerMetre).toFixed(3).replace(/^-0\.000$/, "0.000");
