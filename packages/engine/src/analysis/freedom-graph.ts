import type { Element } from "../elements/element.ts";
import type { NodeGraph } from "../numerics/elimination-order.ts";

/** The graph behind an order of work, and the vertex of it to which each freedom belongs (−1 for none). */
export interface FreedomGraph extends NodeGraph {
  readonly groupOf: Int32Array;
}

/** Each node is one vertex, or two where some of its freedoms are retained. `active` flags the freedoms that have an equation. */
export function nodeGraph(elements: readonly Element[], active: Uint8Array, retained: Uint8Array): FreedomGraph {
  return graphOf(elements, groupsOf(Int32Array.from(retained), active), retained);
}

/**
 * The freedoms of a node are one vertex as far as they belong to the same elements: what joins containers holds few freedoms
 * of their corners, and the others are then taken out container by container (measured: an eighth of the work for 256
 * containers; inside a container it gains nothing). Nothing is retained.
 */
export function freedomGraph(elements: readonly Element[], active: Uint8Array): FreedomGraph {
  const groupOf = groupsOf(signatures(elements, active.length), active);
  return graphOf(elements, groupOf, new Uint8Array(active.length));
}

function graphOf(elements: readonly Element[], groupOf: Int32Array, retained: Uint8Array): FreedomGraph {
  const weights = weightsOf(groupOf);
  const whole = new Uint8Array(weights.length);
  for (let f = 0; f < groupOf.length; f++) {
    const group = groupOf[f] ?? -1;
    if (group >= 0) whole[group] = retained[f] ?? 0;
  }
  return { groupOf, weights, retained: whole, cliques: distinctCliques(elements, groupOf) };
}

/** Numbered in the order of the nodes, within a node by the first freedom. */
function groupsOf(signs: Int32Array, active: Uint8Array): Int32Array {
  const groupOf = new Int32Array(active.length).fill(-1);
  let groups = 0;
  for (let node = 0; node * 6 < active.length; node++) {
    for (let f = node * 6; f < node * 6 + 6; f++) {
      if (!active[f]) continue;
      let same = node * 6;
      while (same < f && !(active[same] && signs[same] === signs[f])) same++;
      groupOf[f] = same < f ? (groupOf[same] ?? 0) : groups++;
    }
  }
  return groupOf;
}

/** Equal for freedoms of the same elements (FNV-1a over their numbers); two that are equal by chance only cost work. */
function signatures(elements: readonly Element[], freedoms: number): Int32Array {
  const signs = new Int32Array(freedoms).fill(0x811c9dc5);
  elements.forEach((element, e) => {
    for (const freedom of element.freedoms) signs[freedom] = Math.imul((signs[freedom] ?? 0) ^ e, 0x01000193);
  });
  return signs;
}

function weightsOf(groupOf: Int32Array): Int32Array {
  let groups = 0;
  for (let f = 0; f < groupOf.length; f++) groups = Math.max(groups, (groupOf[f] ?? -1) + 1);
  const weights = new Int32Array(groups);
  for (let f = 0; f < groupOf.length; f++) {
    const group = groupOf[f] ?? -1;
    if (group >= 0) weights[group] = (weights[group] ?? 0) + 1;
  }
  return weights;
}

/** Elements on the same groups count once: a hold beside a bearing changes nothing in the order of work. */
function distinctCliques(elements: readonly Element[], groupOf: Int32Array): number[][] {
  const cliques: number[][] = [];
  const last = new Int32Array(groupOf.length).fill(-1); // of each group: the last clique that begins with it
  const before: number[] = []; // of each clique: the one before it that begins alike
  for (const element of elements) {
    const count = writeGroups(element, groupOf);
    if (count === 0) continue;
    const first = GROUPS[0] ?? 0;
    let other = last[first] ?? -1;
    while (other >= 0 && !isAtHand(cliques[other] ?? [], count)) other = before[other] ?? -1;
    if (other >= 0) continue;
    before.push(last[first] ?? -1);
    last[first] = cliques.push(GROUPS.slice(0, count)) - 1;
  }
  return cliques;
}

/** The groups of the element at hand; written anew for every element. */
const GROUPS: number[] = [];

/** Returns how many there are. */
function writeGroups({ freedoms }: Element, groupOf: Int32Array): number {
  let count = 0;
  for (let f = 0; f < freedoms.length; f++) {
    const group = groupOf[freedoms[f] ?? 0] ?? -1;
    if (group < 0 || (count > 0 && group === GROUPS[count - 1])) continue;
    let known = 0;
    while (known < count && GROUPS[known] !== group) known++;
    if (known === count) GROUPS[count++] = group;
  }
  return count;
}

function isAtHand(groups: readonly number[], count: number): boolean {
  if (groups.length !== count) return false;
  for (let n = 0; n < count; n++) if (groups[n] !== GROUPS[n]) return false;
  return true;
}
