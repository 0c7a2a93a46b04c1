import type { Occupancy, OccupancyLoad } from "../../../loads/occupancy.ts";
import { fromPsf } from "../us-units.ts";
import { asce7, type Asce7Edition } from "./asce7-edition.ts";

/**
 * Least uniform live load of an occupancy, Table 4.3-1, from memory. `servedPa` is the load of the room a balcony or
 * deck belongs to: it takes 1.5 times that, up to 100 psf; without it the full 100 psf.
 */
export function occupancyLoad(edition: Asce7Edition, occupancy: Occupancy, servedPa?: number): OccupancyLoad {
  const [psf, kind] = rows[occupancy];
  const full = fromPsf(psf);
  return {
    occupancy,
    pressurePa: occupancy === "balcony or deck" && servedPa !== undefined ? Math.min(1.5 * servedPa, full) : full,
    partitionsPa: occupancy === "office" ? fromPsf(15) : 0,
    reducible: kind === "reducible" && psf <= 100,
    halfAsCompanion: kind !== "assembly" && psf <= 100,
    storage: kind === "storage",
    clause: asce7(edition, "Table 4.3-1"),
  };
}

type Kind = "reducible" | "assembly" | "storage";

/** psf, and how far the text allows it to be reduced. */
const rows: Readonly<Record<Occupancy, readonly [number, Kind]>> = {
  dwelling: [40, "reducible"],
  "sleeping room": [30, "reducible"],
  "hotel room": [40, "reducible"],
  "public corridor": [100, "assembly"],
  office: [50, "reducible"],
  lobby: [100, "assembly"],
  "corridor above ground floor": [80, "reducible"],
  "retail, ground floor": [100, "reducible"],
  "retail, upper floor": [75, "reducible"],
  "retail, wholesale": [125, "reducible"],
  "assembly, fixed seats": [60, "assembly"],
  "assembly, movable seats": [100, "assembly"],
  dining: [100, "assembly"],
  classroom: [40, "reducible"],
  stair: [100, "reducible"],
  "light storage": [125, "storage"],
  "heavy storage": [250, "storage"],
  roof: [20, "reducible"],
  "roof garden": [100, "assembly"],
  "balcony or deck": [100, "reducible"],
};
