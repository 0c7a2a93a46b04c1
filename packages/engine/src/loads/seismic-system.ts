import type { DesignBasis } from "@cornerway/schema";
import type { Clause } from "../working/working.ts";
import type { SeismicCategory } from "./seismic-site.ts";

export type SeismicSystem = DesignBasis["systems"]["x"];

/** `not limited`, `not permitted`, or the height in mm up to which a system is permitted. */
export type HeightLimit = "not limited" | "not permitted" | number;

/** A row of the code's table of systems. */
export type SystemRow = {
  readonly system: SeismicSystem;
  readonly listedAs: string;
  readonly r: number;
  readonly omega0: number;
  readonly cd: number;
  readonly limits: Readonly<Record<Exclude<SeismicCategory, "A">, HeightLimit>>;
  readonly clause: Clause;
};

export type SystemPermit =
  | { readonly permitted: true; readonly row: SystemRow; readonly clause: Clause }
  | {
      readonly permitted: false;
      readonly row: SystemRow;
      readonly clause: Clause;
      readonly why: "not permitted in this category" | "too high for this category";
      readonly category: SeismicCategory;
      readonly heightMm: number;
      readonly limit: HeightLimit;
    };
