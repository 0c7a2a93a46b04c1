import type { Clause } from "../working/working.ts";

/** What a floor or roof is used for. */
export const occupancies = [
  "dwelling",
  "sleeping room",
  "hotel room",
  "public corridor",
  "office",
  "lobby",
  "corridor above ground floor",
  "retail, ground floor",
  "retail, upper floor",
  "retail, wholesale",
  "assembly, fixed seats",
  "assembly, movable seats",
  "dining",
  "classroom",
  "stair",
  "light storage",
  "heavy storage",
  "roof",
  "roof garden",
  "balcony or deck",
] as const;
export type Occupancy = (typeof occupancies)[number];

/** The least imposed load of an occupancy. */
export type OccupancyLoad = {
  readonly occupancy: Occupancy;
  readonly pressurePa: number;
  /** Movable partitions on top, Pa. */
  readonly partitionsPa: number;
  readonly reducible: boolean;
  /** False where a combination may not halve it: assembly, garages, more than 100 psf. */
  readonly halfAsCompanion: boolean;
  /** Storage: a quarter of it counts as seismic weight. */
  readonly storage: boolean;
  readonly clause: Clause;
};
