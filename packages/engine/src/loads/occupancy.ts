import type { FloorUse } from "@cornerway/schema";
import type { Clause } from "../working/working.ts";

export type Occupancy = FloorUse["occupancy"];

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
