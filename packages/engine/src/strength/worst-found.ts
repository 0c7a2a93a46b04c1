import type { AssumptionId } from "./assumption-sets.ts";
import { exceeds, type Governing, type PartWorst } from "./screen.ts";

/** The run that governs a part by its name, and its utilisation there. */
export type Found = { readonly use: number; readonly run: string; readonly assumptions: AssumptionId };

/** The worst of one part as plain data, which can go from thread to thread. */
export type WorstFound = {
  readonly partId: string;
  /** What is sure of another part. */
  readonly sureOf?: string;
  readonly asDrawn?: Found;
  readonly heldDown?: Found;
  /** Greatest utilisation of runs that stand as drawn in each set solved for it, in the order of the sets. */
  readonly envelope: readonly (readonly [AssumptionId, number])[];
};

export const worstFound = ({ part, asDrawn, heldDown, envelope }: PartWorst): WorstFound => ({
  partId: part.id,
  ...(part.sureOf !== undefined && { sureOf: part.sureOf }),
  ...(asDrawn && { asDrawn: found(asDrawn) }),
  ...(heldDown && { heldDown: found(heldDown) }),
  envelope: [...envelope],
});

const found = ({ use, solved }: Governing): Found => ({ use, run: solved.run.id, assumptions: solved.set.id });

/** The worst of every part over several sets of assumptions, each screened by itself; of what cannot be told apart the first. */
export function worstOfAll(sets: readonly (readonly WorstFound[])[]): WorstFound[] {
  const worsts = new Map<string, WorstFound>();
  for (const next of sets.flat()) {
    const known = worsts.get(next.partId);
    worsts.set(next.partId, known === undefined ? next : together(known, next));
  }
  return [...worsts.values()];
}

function together(known: WorstFound, next: WorstFound): WorstFound {
  const [asDrawn, heldDown] = [greater(known.asDrawn, next.asDrawn), greater(known.heldDown, next.heldDown)];
  return {
    partId: known.partId,
    ...(known.sureOf !== undefined && { sureOf: known.sureOf }),
    ...(asDrawn && { asDrawn }),
    ...(heldDown && { heldDown }),
    envelope: [...known.envelope, ...next.envelope],
  };
}

const greater = (known: Found | undefined, next: Found | undefined): Found | undefined =>
  next !== undefined && exceeds(next.use, known?.use ?? 0) ? next : known;

/** What governs: a run that stands as drawn where there is one. */
export function governsIn({ partId, asDrawn, heldDown }: WorstFound): Found {
  const governing = asDrawn ?? heldDown;
  if (governing === undefined) throw new Error(`${partId} was screened by no run`);
  return governing;
}

/** Names of the runs that govern some part. */
export const governingNames = (worsts: readonly WorstFound[]): ReadonlySet<string> =>
  new Set(worsts.flatMap(({ asDrawn, heldDown }) => [asDrawn, heldDown]).flatMap((one) => (one ? [one.run] : [])));
