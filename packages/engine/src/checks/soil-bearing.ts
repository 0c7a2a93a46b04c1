import type { PresumptiveSoil } from "../loads/soil-class.ts";
import { openWorking, type OpenWorking } from "../working/open-working.ts";
import type { Clause } from "../working/working.ts";
import { checkOf, type Check } from "./check.ts";

/** What the ground may bear: the code's presumptive value for a class, or a value from an attached report, kPa. */
export type GroundValue =
  | { readonly kind: "presumed"; readonly soil: PresumptiveSoil }
  | { readonly kind: "report"; readonly bearingKpa: number; readonly source: string };

/** A pad on the ground: allowable-stress force N through its middle, plan mm. */
export type PadOnSoil = {
  readonly forceN: number;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly ground: GroundValue;
};

/** Mean pressure under a pad against what the ground may bear. */
export function soilBearing({ forceN, lengthMm, widthMm, ground }: PadOnSoil): Check {
  const working = openWorking("Bearing on soil", clauseOf(ground));
  working.let("P", Math.abs(forceN), "N", "force on the pad, allowable-stress level", "derived", "analysis");
  working.let("L", lengthMm, "mm", "pad length", "derived");
  working.let("B", widthMm, "mm", "pad width", "derived");
  working.compute("q", "P/(L*B)*1000", "kPa");
  letAllowable(working, ground);
  return checkOf({ element: "pad", limitState: "bearing on soil" }, working.against("q", "q_a"));
}

const clauseOf = (ground: GroundValue): Clause =>
  ground.kind === "presumed"
    ? ground.soil.clause
    : { document: "soils report", edition: "attached", place: ground.source, certainty: "published" };

/** The value of a class is the code's; that the ground is of this class is an assumption. */
function letAllowable(working: OpenWorking, ground: GroundValue): void {
  if (ground.kind === "report") {
    working.let("q_a", ground.bearingKpa, "kPa", "allowable bearing", "published", ground.source);
    return;
  }
  const { bearingPa, soil } = ground.soil;
  working.let(
    "q_a",
    bearingPa / 1000,
    "kPa",
    `presumptive bearing, ${soil}`,
    "common practice",
    "class of soil assumed",
  );
  working.note("The class of soil is assumed until a report is attached.");
}
