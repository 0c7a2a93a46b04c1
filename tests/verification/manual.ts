import { outcomeOf, type Outcome, type VerificationCase, type VerificationFamily } from "./verification-case.ts";

export type Row = Omit<VerificationCase, "ours"> & Outcome;
export type ManualFamily = Omit<VerificationFamily, "cases"> & { readonly rows: readonly Row[] };

export type Manual = {
  readonly engineVersion: string;
  readonly families: readonly ManualFamily[];
  readonly counts: readonly CertaintyCount[];
};

/** Verified only where the reference was read in print or derived; the other two kinds are counted, never called verified. */
export type CertaintyCount = {
  readonly certainty: Row["certainty"];
  readonly cases: number;
  readonly within: number;
  readonly largestRelative: number;
};

const certainties = ["published", "derived", "memory", "common practice"] as const;

/** Runs every case. Figures are kept to six significant digits, which is more than any reference gives. */
export function manualOf(families: readonly VerificationFamily[], engineVersion: string): Manual {
  const done = families.map(({ cases, ...family }) => ({ ...family, rows: cases.map(rowOf) }));
  const rows = done.flatMap((family) => family.rows);
  return { engineVersion, families: done, counts: certainties.map((certainty) => countOf(certainty, rows)) };
}

function rowOf({ ours: _compute, ...stated }: VerificationCase): Row {
  const { ours, difference, relative, within } = outcomeOf({ ...stated, ours: _compute });
  return {
    ...stated,
    ours: sixDigits(ours),
    difference: relative === null ? sixDigits(difference) : sixDigits(partPerMillion(relative) * stated.reference),
    relative: relative === null ? null : partPerMillion(relative),
    within,
  };
}

/** To one part in a million: closer than that, a difference says nothing but how sums round. */
const partPerMillion = (share: number): number => Math.round(share * 1e6) / 1e6 + 0;

const sixDigits = (value: number): number => Number(value.toPrecision(6));

function countOf(certainty: Row["certainty"], rows: readonly Row[]): CertaintyCount {
  const own = rows.filter((row) => row.certainty === certainty);
  return {
    certainty,
    cases: own.length,
    within: own.filter((row) => row.within).length,
    largestRelative: own.reduce((most, row) => Math.max(most, Math.abs(row.relative ?? 0)), 0),
  };
}
