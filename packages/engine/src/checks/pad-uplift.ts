import { openWorking } from "../working/open-working.ts";
import { checkOf, type Check } from "./check.ts";

/** Normal-weight concrete, 150 lb/ft³ of the code's tables, N/mm³. From memory. */
const CONCRETE = 23.5e-6;

/** What pulls a pad up at strength level, N, against 0.9 of its own weight; ground on it and friction beside it are left out. */
export function padUplift(pullN: number, volumeMm3: number): Check {
  const working = openWorking("Pad lifted by its hold-down", {
    document: "Statics",
    edition: "",
    place: "equilibrium of a rigid body",
    certainty: "derived",
  });
  working.let("T", pullN, "N", "pull of the hold-downs on it, strength level", "derived", "analysis");
  working.let("G", volumeMm3 * CONCRETE, "N", "weight of the pad, 23.5 kN/m³", "memory");
  working.let("γ", 0.9, "1", "least factor of dead load", "memory");
  working.compute("R", "γ*G", "N");
  return checkOf({ element: "pad", limitState: "pad lifts" }, working.against("T", "R"));
}
