/**
 * The freedoms by which a part is joined to others, 6·(place among its retained nodes) + 0…5: the translations of each, and the
 * rotations of those on which something acts with a moment from outside. All others turn as the inside of the part lets them.
 */
export function retainedFreedoms(retained: readonly number[], momentNodes: readonly number[]): Int32Array {
  const turned = new Set(momentNodes);
  return Int32Array.from(
    retained.flatMap((node, n) => (turned.has(node) ? SIX : TRANSLATIONS).map((direction) => n * 6 + direction)),
  );
}

const TRANSLATIONS = [0, 1, 2] as const;
const SIX = [0, 1, 2, 3, 4, 5] as const;
