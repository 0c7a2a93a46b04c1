/** One comparison of the engine with something it did not make. */
export type VerificationCase = {
  readonly id: string;
  /** What is compared, with the data a reader needs to redo it. */
  readonly what: string;
  readonly source: string;
  readonly certainty: "published" | "derived" | "memory" | "common practice";
  readonly reference: number;
  readonly unit: string;
  /** How far ours may be off, with what the rounding of the reference or the source itself allows. */
  readonly allowed: Allowed;
  /** Why ours is outside of that, where it is and stays so. */
  readonly departs?: string;
  readonly ours: () => number;
};

/** A share of the reference either way, a share by which ours may be less or more, or so much in its unit. */
export type Allowed =
  { readonly relative: number } | { readonly short: number; readonly over: number } | { readonly absolute: number };

export type VerificationFamily = {
  readonly id: string;
  readonly title: string;
  /** What is compared with what, in a paragraph. */
  readonly about: string;
  readonly cases: readonly VerificationCase[];
};

export type Outcome = {
  readonly ours: number;
  /** Ours less the reference. */
  readonly difference: number;
  readonly relative: number | null;
  readonly within: boolean;
};

export function outcomeOf({ ours: compute, reference, allowed }: VerificationCase): Outcome {
  const ours = compute();
  const difference = ours - reference;
  const relative = reference === 0 ? null : difference / reference;
  return { ours, difference, relative, within: isWithin(difference, reference, allowed) };
}

function isWithin(difference: number, reference: number, allowed: Allowed): boolean {
  if ("absolute" in allowed) return Math.abs(difference) <= allowed.absolute;
  if ("relative" in allowed) return Math.abs(difference) <= allowed.relative * Math.abs(reference);
  const share = difference / reference;
  return share >= -allowed.short && share <= allowed.over;
}
