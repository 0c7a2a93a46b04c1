import type { FlowEdge } from "./vertical-flow.ts";

/**
 * The edges of a flow less all that turns in circles: every flow is paths from where it comes in to where it leaves, and
 * circles (Ford and Fulkerson, from memory). Circles carry nothing across any cut, and as much into each point as out of it;
 * without them no way leads to a point twice. Each circle met is taken off by the least it carries, which ends an edge, so
 * there are no more of them than edges.
 */
export function withoutCircles(nodes: number, edges: readonly FlowEdge[]): FlowEdge[] {
  const forcesN = new Circles(nodes, edges).takenOff();
  return edges.flatMap((edge, n) => ((forcesN[n] ?? 0) > 0 ? [{ ...edge, forceN: forcesN[n] ?? 0 }] : []));
}

/** A search in depth: an edge that leads back to a point on the way there closes a circle. */
class Circles {
  private readonly edges: readonly FlowEdge[];
  private readonly forcesN: Float64Array;
  /** Edges that leave each point, and how many of them are looked through. */
  private readonly leaving: number[][];
  private readonly looked: Int32Array;
  /** Place on the way, from 1; 0 is not met, DONE has no circle through it any more. */
  private readonly placeOf: Int32Array;
  private points: number[] = [];
  private way: number[] = [];

  constructor(nodes: number, edges: readonly FlowEdge[]) {
    this.edges = edges;
    this.forcesN = Float64Array.from(edges, ({ forceN }) => forceN);
    this.leaving = Array.from({ length: nodes }, () => []);
    edges.forEach(({ from }, n) => this.leaving[from]?.push(n));
    this.looked = new Int32Array(nodes);
    this.placeOf = new Int32Array(nodes);
  }

  takenOff(): Float64Array {
    for (let start = 0; start < this.placeOf.length; start++) {
      if (this.placeOf[start] === 0) this.goTo(start);
      while (this.points.length > 0) this.step();
    }
    return this.forcesN;
  }

  private step(): void {
    const at = this.points.at(-1) ?? 0;
    const edge = this.leaving[at]?.[this.looked[at] ?? 0];
    if (edge === undefined) return this.goBack(DONE);
    const to = this.edges[edge]?.to ?? 0;
    const place = this.placeOf[to] ?? 0;
    if ((this.forcesN[edge] ?? 0) <= 0 || place === DONE) this.looked[at] = (this.looked[at] ?? 0) + 1;
    else {
      this.way.push(edge);
      if (place === 0) this.goTo(to);
      else this.takeOff(place);
    }
  }

  private goTo(node: number): void {
    this.points.push(node);
    this.placeOf[node] = this.points.length;
  }

  private goBack(to: 0 | typeof DONE): void {
    const node = this.points.pop();
    if (node !== undefined) this.placeOf[node] = to;
    this.way.pop();
  }

  /** The circle is the end of the way, from the point in this place on; the way goes back to before the first edge that ends. */
  private takeOff(place: number): void {
    const circle = this.way.slice(place - 1);
    const leastN = circle.reduce((least, edge) => Math.min(least, this.forcesN[edge] ?? 0), Infinity);
    for (const edge of circle) this.forcesN[edge] = (this.forcesN[edge] ?? 0) - leastN;
    const ended = circle.findIndex((edge) => (this.forcesN[edge] ?? 0) <= 0);
    const left = place + ended;
    this.way.length = left - 1;
    for (const node of this.points.splice(left)) this.placeOf[node] = 0;
  }
}

const DONE = -1;
