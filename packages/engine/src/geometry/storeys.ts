import type { Scheme } from "@cornerway/schema";

/** One level of the building: its name, the height of its lowest fittings above site datum, and who stands on it. */
export type Storey = {
  readonly index: number;
  readonly name: string;
  readonly levelMm: number;
  readonly containerIds: readonly string[];
};

/**
 * Containers grouped by the height they stand at, lowest first. A new storey begins where no container stands for a
 * metre of height, so that units of 2438, 2591 and 2896 beside each other still share one.
 */
export function storeysOf(scheme: Scheme): Storey[] {
  const byHeight = scheme.containers.toSorted((a, b) => a.zUm - b.zUm || (a.id < b.id ? -1 : 1));
  const groups: (typeof byHeight)[] = [];
  for (const container of byHeight) {
    const group = groups.at(-1);
    const last = group?.at(-1);
    if (group === undefined || last === undefined || container.zUm - last.zUm > newStoreyUm) groups.push([container]);
    else group.push(container);
  }
  return groups.map((group, index) => ({
    index,
    name: storeyName(index),
    levelMm: (group[0]?.zUm ?? 0) / 1000,
    containerIds: group.map((container) => container.id).toSorted(),
  }));
}

/** Less than the lowest unit (2438), more than the difference heights add up to in a few storeys. */
const newStoreyUm = 1_000_000;

const names = ["Ground", "First", "Second", "Third", "Fourth", "Fifth", "Sixth", "Seventh", "Eighth", "Ninth", "Tenth"];

const storeyName = (index: number): string => names[index] ?? `Storey ${index}`;
