import type { PremiumLine, UnitSystem } from "@cornerway/schema";
import { volumeWords } from "../../units/volume-words.ts";

/** Exact by the international yard and pound of 1959. */
const metresPerFoot = 0.3048;
const kgPerPound = 0.453_592_37;

export const lengthWords = (lengthM: number, units: UnitSystem): string =>
  units === "US" ? `${(lengthM / metresPerFoot).toFixed(1)} ft` : `${lengthM.toFixed(1)} m`;

export const massWords = (massKg: number, units: UnitSystem): string =>
  units === "US" ? `${Math.round(massKg / kgPerPound)} lb` : `${Math.round(massKg)} kg`;

export const hoursWords = (hours: number): string => `${hours.toFixed(1)} h`;

export function quantityWords({ quantity, unit }: Pick<PremiumLine, "quantity" | "unit">, units: UnitSystem): string {
  if (unit === "m") return lengthWords(quantity, units);
  if (unit === "m³") return volumeWords(quantity, units);
  return unit === "kg" ? massWords(quantity, units) : String(quantity);
}

export const itemWords = ({ item, section }: Pick<PremiumLine, "item" | "section">): string =>
  section === null ? item : `${item}, ${section}`;
