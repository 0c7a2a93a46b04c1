import type { DesignBasis } from "@cornerway/schema";
import type { Clause } from "../working/working.ts";

export type SoilClass = DesignBasis["soil"]["class"];

/** What ground may be taken to carry before it is investigated; printed as assumed until a report is attached. */
export type PresumptiveSoil = {
  readonly soil: SoilClass;
  readonly bearingPa: number;
  /** Lateral bearing per metre of depth, Pa/m. */
  readonly lateralPaPerM: number;
  readonly friction: number | undefined;
  readonly cohesionPa: number | undefined;
  readonly clause: Clause;
};
