import type { Scheme } from "@cornerway/schema";
import type { Clause } from "../working/working.ts";
import { openWorking } from "../working/open-working.ts";
import { checkOf, valueAgainst, type Check } from "./check.ts";
import type { CheckedElement } from "./limit-state.ts";

/** A movement with what caused it, mm; spans count twice the length for a cantilever. */
export type Deflection = {
  readonly element: CheckedElement;
  readonly load: string;
  readonly deflectionMm: number;
  readonly spanMm: number;
  readonly spanOver: 180 | 240 | 360 | 480;
};

/** Limits of the building code's table of deflections. From memory. */
const tableIn = (edition: Scheme["site"]["edition"]): Clause => ({
  document: "IBC",
  edition: edition.slice(4),
  place: "Table 1604.3",
  certainty: "memory",
});

/** Deflection against a part of the span; the load and the span are stated with it. */
export function deflection(movement: Deflection, edition: Scheme["site"]["edition"]): Check {
  const { element, deflectionMm, spanMm, spanOver, load } = movement;
  return valueAgainst(
    { element, limitState: "deflection" },
    tableIn(edition),
    { value: deflectionMm, meaning: `deflection under ${load}` },
    { value: spanMm / spanOver, meaning: `span ${spanMm} mm over ${spanOver}`, certainty: "memory" },
    "mm",
  );
}

/** Movement towards a neighbour or a pane against the gap left, mm. The gap must not close: no code states the limit. */
export function gapClosure(element: CheckedElement, movementMm: number, gapMm: number): Check {
  return valueAgainst(
    { element, limitState: "gap closure" },
    { document: "common practice", edition: "none", place: "the gap must not close", certainty: "common practice" },
    { value: movementMm, meaning: "movement into the gap" },
    { value: gapMm, meaning: "gap left", certainty: "common practice" },
    "mm",
  );
}

/** Part of the height a storey may drift in wind at service: finishes and glass; common practice, no published source. */
export const windDriftPart = 1 / 400;

/**
 * Wind at service over that of allowable level: drift is looked at under 0.7 of the 50-year wind (ASCE 7-05 commentary B.1.2,
 * D + 0.5 L + 0.7 W, from memory; the ten-year maps of later editions come to the same), which is the mapped one over 1.6.
 */
const [SERVICE_SHARE, MAPPED_OVER_50_YEAR, ALLOWABLE_SHARE] = [0.7, 1.6, 0.6];
export const serviceWind: number = SERVICE_SHARE / MAPPED_OVER_50_YEAR / ALLOWABLE_SHARE;

/** `allowableMm`: what 0.6 W moves a storey, mm. */
export function windDrift(allowableMm: number, heightMm: number): Check {
  const working = openWorking("Drift of a storey in wind at service", {
    document: "common practice",
    edition: "none",
    place: "1/400 of the height under 0.7 of the 50-year wind",
    certainty: "common practice",
  });
  working.let("Δ", Math.abs(allowableMm), "mm", "what 0.6 W moves it", "derived", "analysis");
  working.let("c", SERVICE_SHARE, "1", "of the 50-year wind", "memory", "ASCE 7-05 commentary B.1.2");
  working.let(
    "m",
    MAPPED_OVER_50_YEAR,
    "1",
    "mapped wind over the 50-year one",
    "memory",
    "ASCE 7-10 commentary C26.5",
  );
  working.let("a", ALLOWABLE_SHARE, "1", "factor of wind at allowable level", "memory");
  working.let("h", heightMm, "mm", "height", "derived");
  working.compute("drift", "Δ*c/(m*a)", "mm");
  working.compute("limit", "h/400", "mm");
  return checkOf({ element: "building", limitState: "drift" }, working.against("drift", "limit"));
}

/** Storey drift against the part of the storey height allowed, both mm. The part comes from the seismic code or practice. */
export function drift(
  driftMm: number,
  allowed: { readonly heightMm: number; readonly part: number; readonly clause: Clause },
): Check {
  return valueAgainst(
    { element: "building", limitState: "drift" },
    allowed.clause,
    { value: driftMm, meaning: "storey drift" },
    {
      value: allowed.part * allowed.heightMm,
      meaning: `${allowed.part} of the storey height`,
      certainty: allowed.clause.certainty,
    },
    "mm",
  );
}
