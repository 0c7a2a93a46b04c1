import { springsOnlyIn, type ContactState, type Spring, type System } from "./system.ts";

/** What sets one state of a system apart from another. */
export interface StateDifference {
  /** By how much springs are stiffer (or, negative, softer). */
  readonly springs: readonly Spring[];
  /** Freedoms that are held no longer. */
  readonly freed: readonly number[];
  /** Freedoms that are held now. */
  readonly held: readonly number[];
}

/** `before` and `now` flag the freedoms that each of the two holds. */
export function stateDifference(
  system: System,
  [from, before]: readonly [ContactState, Uint8Array],
  [to, now]: readonly [ContactState, Uint8Array],
): StateDifference {
  const freed: number[] = [];
  const held: number[] = [];
  now.forEach((flag, freedom) => {
    if (flag === before[freedom]) return;
    if (flag) held.push(freedom);
    else freed.push(freedom);
  });
  return { springs: changedSprings(system, from, to), freed, held };
}

function changedSprings(system: System, from: ContactState, to: ContactState): Spring[] {
  const changes = new Map<string, Spring>();
  const add = ({ lower, upper, stiffness }: Spring, factor: number): void => {
    const key = `${lower} ${upper}`;
    changes.set(key, { lower, upper, stiffness: (changes.get(key)?.stiffness ?? 0) + factor * stiffness });
  };
  for (const spring of springsOnlyIn(system, from, to)) add(spring, -1);
  for (const spring of springsOnlyIn(system, to, from)) add(spring, 1);
  return [...changes.values()].filter(({ stiffness }) => stiffness !== 0);
}
