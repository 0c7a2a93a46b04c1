import { integerRoom } from "./number-room.ts";
import { eliminationOrder, type EliminationStep, type NodeGraph } from "./elimination-order.ts";

/** A dense block of the factorisation: its first `pivots` rows are eliminated in it, the others are passed on. */
export interface Front {
  readonly pivots: number;
  /** Equation numbers, ascending; the first `pivots` of them are this front's own. */
  readonly rows: Int32Array;
  /** Index of the front that takes the remainder, −1 for none. */
  readonly parent: number;
}

/**
 * The order of work for one sparse symmetric matrix: fronts in an order in which children come before parents, and the
 * equation number of every unknown. Retained unknowns have the highest equation numbers and are gathered in `root`.
 */
export interface FrontTree {
  readonly fronts: readonly Front[];
  /** First equation number of each node, −1 without unknowns; a node's unknowns are numbered in a row. */
  readonly firstEquation: Int32Array;
  readonly equations: number;
  /** Number of equations that are eliminated; the rest are retained. */
  readonly eliminated: number;
  /** Front in which each equation is eliminated; retained ones belong to the root, which is the last front. */
  readonly frontOf: Int32Array;
}

export function frontTree(graph: NodeGraph): FrontTree {
  return frontTreeOf(eliminationOrder(graph), graph);
}

/** The same for an order that is given. */
export function frontTreeOf(steps: readonly EliminationStep[], graph: NodeGraph): FrontTree {
  const groups = postOrder(amalgamate(link(steps, graph.weights)));
  const { firstEquation, eliminated, equations } = numberEquations(groups, graph);
  const frontOf = new Int32Array(equations).fill(groups.length);
  const fronts = groups.map((group, index): Front => {
    const rows = rowsOf(group, firstEquation, graph.weights);
    const pivots = weightOf(group.pivots, graph.weights);
    for (let p = 0; p < pivots; p++) frontOf[rows[p] ?? 0] = index;
    return { pivots, rows, parent: group.boundary.length > 0 ? group.parent : -1 };
  });
  return { fronts: [...fronts, root(eliminated, equations)], firstEquation, equations, eliminated, frontOf };
}

interface Group {
  pivots: number[];
  boundary: readonly number[];
  parent: number;
  size: number;
  children: number[];
  pivotWeight: number;
}

/** Joins every step to the step that eliminates the first of its boundary; steps that end in retained nodes have none. */
function link(steps: readonly EliminationStep[], weights: Int32Array): Group[] {
  const stepOf = new Int32Array(weights.length).fill(steps.length);
  steps.forEach((step, index) => step.pivots.forEach((node) => (stepOf[node] = index)));
  const groups = steps.map((step): Group => {
    let parent = steps.length;
    for (const node of step.boundary) parent = Math.min(parent, stepOf[node] ?? parent);
    const pivotWeight = weightOf(step.pivots, weights);
    const size = pivotWeight + weightOf(step.boundary, weights);
    return { pivots: [...step.pivots], boundary: step.boundary, parent, size, children: [], pivotWeight };
  });
  groups.forEach((group, index) => groups[group.parent]?.children.push(index));
  return groups;
}

/** Larger fronts do more work per loaded number; below this many extra zeros per front the exchange pays (measured). */
const EXTRA_PART = 0.1;
const SMALL_FRONT = 30;

/** Merges a group into its parent where the parent's front hardly grows by it. */
function amalgamate(groups: Group[]): Group[] {
  for (let index = 0; index < groups.length; index++) {
    const group = groups[index];
    const parent = group === undefined ? undefined : groups[group.parent];
    if (group === undefined || parent === undefined) continue;
    const merged = parent.size + group.pivotWeight;
    const extra = merged - group.size;
    if (extra * group.pivotWeight > EXTRA_PART * merged * Math.min(merged, SMALL_FRONT)) continue;
    parent.pivots = [...group.pivots, ...parent.pivots];
    parent.pivotWeight += group.pivotWeight;
    parent.size = merged;
    for (const child of group.children) {
      const moved = groups[child];
      if (moved === undefined || moved.parent !== index) continue;
      moved.parent = group.parent;
      parent.children.push(child);
    }
    group.pivots = [];
    group.children = [];
  }
  return groups;
}

/** Children before parents, depth first, so that few remainders wait at any time; merged-away groups are dropped. */
function postOrder(groups: Group[]): Group[] {
  const ordered: Group[] = [];
  const place = new Int32Array(groups.length).fill(-1);
  groups.forEach((group, index) => {
    if (group.pivots.length > 0 && groups[group.parent] === undefined) visit(index);
  });
  const total = ordered.length;
  for (const group of ordered) group.parent = group.parent < groups.length ? (place[group.parent] ?? total) : total;
  return ordered;

  function visit(start: number): void {
    const stack: { index: number; next: number }[] = [{ index: start, next: 0 }];
    for (let top = stack.at(-1); top !== undefined; top = stack.at(-1)) {
      const group = groups[top.index];
      const child = group?.children[top.next++];
      if (child === undefined) {
        stack.pop();
        if (group !== undefined) place[top.index] = ordered.push(group) - 1;
      } else if (groups[child]?.parent === top.index && (groups[child]?.pivots.length ?? 0) > 0) {
        stack.push({ index: child, next: 0 });
      }
    }
  }
}

function numberEquations(groups: readonly Group[], graph: NodeGraph) {
  const firstEquation = new Int32Array(graph.weights.length).fill(-1);
  let equations = 0;
  const number = (node: number): void => {
    firstEquation[node] = equations;
    equations += graph.weights[node] ?? 0;
  };
  for (const group of groups) group.pivots.forEach(number);
  const eliminated = equations;
  graph.weights.forEach((weight, node) => {
    if (graph.retained[node] && weight > 0) number(node);
  });
  return { firstEquation, eliminated, equations };
}

function rowsOf({ pivots, boundary }: Group, firstEquation: Int32Array, weights: Int32Array): Int32Array {
  const rows = integerRoom(weightOf(pivots, weights) + weightOf(boundary, weights));
  let row = 0;
  for (const nodes of [pivots, boundary])
    for (const node of nodes) {
      const first = firstEquation[node] ?? 0;
      for (let k = 0; k < (weights[node] ?? 0); k++) rows[row++] = first + k;
    }
  return rows.sort();
}

function root(eliminated: number, equations: number): Front {
  return { pivots: 0, rows: Int32Array.from({ length: equations - eliminated }, (_, k) => eliminated + k), parent: -1 };
}

function weightOf(nodes: readonly number[], weights: Int32Array): number {
  let sum = 0;
  for (let n = 0; n < nodes.length; n++) sum += weights[nodes[n] ?? 0] ?? 0;
  return sum;
}
