/** One step of the elimination: the nodes taken out together and the nodes they were still joined to. */
export interface EliminationStep {
  readonly pivots: readonly number[];
  readonly boundary: readonly number[];
}

export interface NodeGraph {
  /** Number of unknowns at each node; nodes without unknowns are left out. */
  readonly weights: Int32Array;
  /** Sets of nodes joined to each other (one per element). */
  readonly cliques: readonly (readonly number[])[];
  /** Nodes that are never eliminated. */
  readonly retained: Uint8Array;
}

/**
 * Fill-reducing order by approximate minimum degree on the quotient graph whose first members are the elements themselves.
 * Source: Amestoy, Davis and Duff, SIAM J. Matrix Anal. Appl. 17 (1996), degree bound and element absorption (from memory).
 * Ties go to the node freed last, then to the lowest number, so the order depends on the input alone.
 */
export function eliminationOrder(graph: NodeGraph): EliminationStep[] {
  const quotient = new QuotientGraph(graph);
  const steps: EliminationStep[] = [];
  for (let node = quotient.takeLowest(); node >= 0; node = quotient.takeLowest()) steps.push(quotient.eliminate(node));
  return steps;
}

class QuotientGraph {
  private readonly weights: Int32Array;
  private readonly retained: Uint8Array;
  private readonly members: number[][]; // nodes of each live element
  private readonly elementsOf: number[][]; // live elements of each node
  private readonly queue: DegreeQueue;
  private readonly mark: Int32Array; // node → last element list it was seen in
  private readonly outside: Int32Array; // element → weight of its members outside the newest element
  private readonly outsideStamp: Int32Array;
  private stamp = 0;

  constructor(graph: NodeGraph) {
    const count = graph.weights.length;
    this.weights = graph.weights;
    this.retained = graph.retained;
    this.members = graph.cliques.map((clique) => clique.filter((node) => (graph.weights[node] ?? 0) > 0));
    this.elementsOf = Array.from({ length: count }, () => []);
    this.members.forEach((clique, e) => clique.forEach((node) => this.elementsOf[node]?.push(e)));
    this.mark = new Int32Array(count);
    this.outside = new Int32Array(this.members.length + count);
    this.outsideStamp = new Int32Array(this.members.length + count);
    this.queue = new DegreeQueue(
      count,
      this.weights.reduce((sum, w) => sum + w, 0),
    );
    for (let node = count - 1; node >= 0; node--) {
      if ((this.weights[node] ?? 0) > 0 && !this.retained[node]) this.queue.put(node, this.firstDegree(node));
    }
  }

  takeLowest(): number {
    return this.queue.takeLowest();
  }

  eliminate(pivot: number): EliminationStep {
    const front = this.union(pivot);
    const element = this.members.length;
    for (const old of this.elementsOf[pivot] ?? []) this.members[old] = [];
    this.elementsOf[pivot] = [];
    this.weighOutside(front);
    const pivots = [pivot];
    const boundary = front.filter((node) => !this.absorb(node, element, pivots));
    this.members.push(boundary);
    this.refreshDegrees(boundary, element);
    return { pivots, boundary };
  }

  private firstDegree(node: number): number {
    this.stamp++;
    let degree = 0;
    for (const e of this.elementsOf[node] ?? []) {
      for (const other of this.members[e] ?? []) {
        if (other === node || this.mark[other] === this.stamp) continue;
        this.mark[other] = this.stamp;
        degree += this.weights[other] ?? 0;
      }
    }
    return degree;
  }

  private union(pivot: number): number[] {
    this.stamp++;
    this.mark[pivot] = this.stamp;
    const nodes: number[] = [];
    for (const e of this.elementsOf[pivot] ?? []) {
      for (const node of this.members[e] ?? []) {
        if (this.mark[node] === this.stamp) continue;
        this.mark[node] = this.stamp;
        nodes.push(node);
      }
    }
    return nodes;
  }

  /** For every element touching the front: the weight of its members that are not in the front. */
  private weighOutside(front: readonly number[]): void {
    for (const node of front) {
      for (const e of this.elementsOf[node] ?? []) {
        if (this.outsideStamp[e] !== this.stamp) {
          this.outsideStamp[e] = this.stamp;
          this.outside[e] = (this.members[e] ?? []).reduce((sum, member) => sum + (this.weights[member] ?? 0), 0);
        }
        this.outside[e] = (this.outside[e] ?? 0) - (this.weights[node] ?? 0);
      }
    }
  }

  /** Joins the node to the new element; true when nothing else holds it, so that it is eliminated in the same step. */
  private absorb(node: number, element: number, pivots: number[]): boolean {
    const rest = (this.elementsOf[node] ?? []).filter(
      (e) => (this.members[e] ?? []).length > 0 && this.outside[e] !== 0,
    );
    if (rest.length === 0 && !this.retained[node]) {
      this.queue.remove(node);
      this.elementsOf[node] = [];
      pivots.push(node);
      return true;
    }
    rest.push(element);
    this.elementsOf[node] = rest;
    return false;
  }

  private refreshDegrees(boundary: readonly number[], element: number): void {
    const total = boundary.reduce((sum, node) => sum + (this.weights[node] ?? 0), 0);
    for (const node of boundary) {
      if (this.retained[node]) continue;
      let degree = total - (this.weights[node] ?? 0);
      for (const e of this.elementsOf[node] ?? []) if (e !== element) degree += this.outside[e] ?? 0;
      this.queue.remove(node);
      this.queue.put(node, degree);
    }
  }
}

/** Nodes in doubly linked lists by degree. */
class DegreeQueue {
  private readonly head: Int32Array;
  private readonly next: Int32Array;
  private readonly previous: Int32Array;
  private readonly degreeOf: Int32Array;
  private lowest = 0;

  constructor(nodes: number, largestDegree: number) {
    this.head = new Int32Array(largestDegree + 1).fill(-1);
    this.next = new Int32Array(nodes).fill(-1);
    this.previous = new Int32Array(nodes).fill(-1);
    this.degreeOf = new Int32Array(nodes).fill(-1);
  }

  put(node: number, degree: number): void {
    const capped = Math.min(degree, this.head.length - 1);
    const first = this.head[capped] ?? -1;
    this.next[node] = first;
    this.previous[node] = -1;
    if (first >= 0) this.previous[first] = node;
    this.head[capped] = node;
    this.degreeOf[node] = capped;
    if (capped < this.lowest) this.lowest = capped;
  }

  remove(node: number): void {
    const degree = this.degreeOf[node] ?? -1;
    if (degree < 0) return;
    const before = this.previous[node] ?? -1;
    const after = this.next[node] ?? -1;
    if (before >= 0) this.next[before] = after;
    else this.head[degree] = after;
    if (after >= 0) this.previous[after] = before;
    this.degreeOf[node] = -1;
  }

  takeLowest(): number {
    while (this.lowest < this.head.length && (this.head[this.lowest] ?? -1) < 0) this.lowest++;
    if (this.lowest >= this.head.length) return -1;
    const node = this.head[this.lowest] ?? -1;
    this.remove(node);
    return node;
  }
}
