import type { FlowPath } from "./flow-paths.ts";
import type { FlowNode, VerticalFlow } from "./vertical-flow.ts";
import { along, onWallAt, roundMm, wallOf, type WallSide } from "./wall-plane.ts";

/** A point of the unrolled walls, mm: rightwards as seen from outside from the front right post, and up. */
export type WallPoint = { readonly sMm: number; readonly zMm: number };

/** The walls of one container laid flat, so that a way round a corner is one line. */
export class Unrolled {
  readonly flow: VerticalFlow;
  private readonly sheets: readonly Rect[];

  constructor(flow: VerticalFlow) {
    this.flow = flow;
    this.sheets = flow.sheets.map(({ wall, a, b, bottomMm, topMm }) => {
      const [s0, s1] = [along(wall, a, flow.lines), along(wall, b, flow.lines)];
      return { s0: Math.min(s0, s1), s1: Math.max(s0, s1), z0: bottomMm, z1: topMm };
    });
  }

  /** Where a tube starts, along the walls. */
  startOf(path: FlowPath): number {
    return this.wayOf({ ...path, nodes: path.nodes.slice(0, 2) })[0]?.sMm ?? 0;
  }

  /** The points of a tube; past the front right post it counts on. */
  wayOf({ nodes: path }: FlowPath): WallPoint[] {
    const { nodes, lines } = this.flow;
    const places = path.flatMap((n) => nodes[n] ?? []);
    const steps = places.slice(1).map((to, n) => {
      const from = places[n] ?? to;
      const wall = from.x === to.x && from.y === to.y ? null : wallOf(from, to, lines);
      return { wall, by: wall === null ? 0 : along(wall, to, lines) - along(wall, from, lines) };
    });
    const [first] = places;
    if (first === undefined) return [];
    const begins = steps.find(({ wall }) => wall !== null)?.wall ?? wallOf(first, first, lines) ?? "right";
    let sMm = along(begins, first, lines);
    return places.map(({ z }, n) => {
      sMm += n === 0 ? 0 : (steps[n - 1]?.by ?? 0);
      return { sMm, zMm: z };
    });
  }

  /** Whether there is sheet at a place. */
  hasSheet({ sMm, zMm }: WallPoint): boolean {
    const round = roundMm(this.flow.lines);
    const s = sMm - Math.floor(sMm / round) * round;
    return this.sheets.some(({ s0, s1, z0, z1 }) => s >= s0 && s <= s1 && zMm >= z0 && zMm <= z1);
  }

  /** A way in the axes of the container, cut where it turns a corner. */
  byWall(way: readonly WallPoint[]): { wall: WallSide; points: FlowNode[] }[] {
    const pieces: { wall: WallSide; points: FlowNode[] }[] = [];
    way.forEach(({ sMm, zMm }, n) => {
      const next = way[n + 1] ?? way[n - 1];
      const towards = next === undefined ? sMm : (sMm + next.sMm) / 2;
      const { wall, x, y } = onWallAt(sMm, towards, this.flow.lines);
      const last = pieces.at(-1);
      if (last?.wall === wall) last.points.push({ x, y, z: zMm });
      else {
        last?.points.push({ x, y, z: zMm });
        pieces.push({ wall, points: [{ x, y, z: zMm }] });
      }
    });
    return pieces.filter(({ points }) => points.length > 1);
  }
}

type Rect = { readonly s0: number; readonly s1: number; readonly z0: number; readonly z1: number };
