import { governingVectors, type GoverningVectors } from "../strength/live-strength.ts";
import type { Strength } from "../strength/strength-of.ts";

/**
 * The vectors that governed in a run, each looked at in every set that is looked at: what governed in a set that is not is near to
 * governing in these.
 */
export function everywhere(run: Extract<Strength, { accepted: true }>): GoverningVectors {
  const sets = [...governingVectors(run).keys()];
  const byOwner = new Map<string, Set<string>>();
  for (const { ownerId, governingRun } of run.results)
    byOwner.set(ownerId, (byOwner.get(ownerId) ?? new Set()).add(governingRun));
  return new Map(sets.map((set) => [set, byOwner]));
}

/** What governed in either: the first itself where the other adds nothing to it. */
export function together(one: GoverningVectors, other: GoverningVectors): GoverningVectors {
  const both = united(one, other);
  return countOf(both) === countOf(one) ? one : both;
}

const countOf = (governed: GoverningVectors): number =>
  [...governed.values()].reduce(
    (sum, owners) => sum + [...owners.values()].reduce((own, { size }) => own + size, 0),
    0,
  );

const united = (one: GoverningVectors, other: GoverningVectors): GoverningVectors =>
  new Map(
    [...one].map(([set, owners]) => {
      const others = other.get(set) ?? new Map<string, ReadonlySet<string>>();
      const ids = new Set([...owners.keys(), ...others.keys()]);
      const runs = (id: string) => new Set([...(owners.get(id) ?? []), ...(others.get(id) ?? [])]);
      return [set, new Map([...ids].map((id) => [id, runs(id)]))];
    }),
  );

/** The same with these owners, held against all that governed anything: they have governed nothing yet. */
export const withOwners = (governed: GoverningVectors, ownerIds: ReadonlySet<string>): GoverningVectors =>
  new Map(
    [...governed].map(([set, byOwner]) => {
      const all = new Set([...byOwner.values()].flatMap((runs) => [...runs]));
      return [set, new Map([...byOwner, ...[...ownerIds].map((id) => [id, all] as const)])];
    }),
  );
