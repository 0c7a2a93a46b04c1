import { newtonsPerPound, type UnitSystem } from "@cornerway/schema";

/** The unit forces on a drawing are in. */
export const forceUnit = (units: UnitSystem): string => (units === "US" ? "kip" : "kN");

export const inForceUnit = (forceKn: number, units: UnitSystem): number =>
  units === "US" ? forceKn / newtonsPerPound : forceKn;
