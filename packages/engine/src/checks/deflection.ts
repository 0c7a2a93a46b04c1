import type { Scheme } from "@cornerway/schema";
import type { Clause } from "../working/working.ts";
import { valueAgainst, type Check } from "./check.ts";
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

/** Part of the height a storey may drift in wind at allowable level: finishes and glass; common practice, no published source. */
export const windDriftPart = 1 / 400;

export const windDrift = (driftMm: number, heightMm: number): Check =>
  drift(driftMm, {
    heightMm,
    part: windDriftPart,
    clause: {
      document: "common practice",
      edition: "none",
      place: "drift in wind, 1/400 of the height under 0.6 W",
      certainty: "common practice",
    },
  });

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
