import type { UnitSolution } from "../analysis/recover-unit.ts";
import type { ModelBeam, ModelNode, ModelPanel } from "../model/analytical-model.ts";
import type { UnitFragment } from "../model/building-model.ts";
import { memberAxes } from "../model/member-axes.ts";
import { postLinesOf, rightwards, wallOf, type PostLines, type WallSide } from "./wall-plane.ts";

/** A point of a container's walls, mm in its own axes. */
export type FlowNode = { readonly x: number; readonly y: number; readonly z: number };

/** Vertical force handed from one point to the next, N; up to right, counted clockwise as seen from outside. */
export type FlowEdge = {
  readonly from: number;
  readonly to: number;
  readonly forceN: number;
  /** The side of `from` it leaves by: 0 up, 1 right, 2 down, 3 left. */
  readonly port: Port;
  /** The wall of a level edge; uprights may stand between two. */
  readonly wall: WallSide | null;
};
export type Port = 0 | 1 | 2 | 3;

/** How vertical force goes through the walls of one container. */
export type VerticalFlow = {
  readonly lines: PostLines;
  readonly nodes: readonly FlowNode[];
  readonly edges: readonly FlowEdge[];
  /** What each point gets from outside the walls, N: loads, what stands on it; less what it stands on. */
  readonly sourcesN: Float64Array;
  readonly nodeAt: (at: FlowNode) => number | undefined;
  /** Where there is sheet: its lower corners, and how high it stands. */
  readonly sheets: readonly SheetPlace[];
};

export type SheetPlace = {
  readonly wall: WallSide;
  readonly a: FlowNode;
  readonly b: FlowNode;
  readonly bottomMm: number;
  readonly topMm: number;
};

/** Sheets are cut into strips this high to follow what their flow hands over. */
const STRIP_MM = 200;

/**
 * The flow of vertical force, downwards positive, through uprights (axial force), sheets (struts on their upright edges and
 * shear flow between them, the same at every height of a sheet) and rails (shear). Where nothing is loaded what comes in
 * goes out, so its streamlines are the paths of the load. Source: Kelly and Tosh, Interpreting load paths and stress
 * trajectories in elasticity, Engineering Computations 17 (2000), from memory; here for sheets of one constant shear.
 */
export function verticalFlow(fragment: UnitFragment, inside: UnitSolution): VerticalFlow {
  const lines = postLinesOf(fragment.nodes);
  const draft = new FlowDraft(fragment, inside, lines);
  const sheets = fragment.panels.flatMap((panel) => draft.sheet(panel));
  for (const sheet of sheets) draft.level(sheet);
  draft.numberPoints();
  for (const beam of fragment.beams) draft.upright(beam);
  for (const sheet of sheets) draft.carry(sheet);
  draft.closeUprights();
  for (const beam of fragment.beams) draft.rail(beam);
  return draft.flow(sheets.map(({ wall, left: a, right: b, bottomMm, topMm }) => ({ wall, a, b, bottomMm, topMm })));
}

type Sheet = {
  readonly wall: WallSide;
  /** Bottom left and bottom right of the panel. */
  readonly left: ModelNode;
  readonly right: ModelNode;
  readonly bottomMm: number;
  readonly topMm: number;
  readonly leftN: number;
  readonly rightN: number;
  /** From the left upright to the right one, N/mm of height. */
  readonly flow: number;
  readonly strips: number;
};

/** All points above one place, upwards; numbered in a row from `first` on once all are known. */
type Upright = {
  readonly x: number;
  readonly y: number;
  readonly levels: number[];
  first: number;
  /** Down each length, from its lower level on; null where nothing stands. */
  forces: (number | null)[];
};

class FlowDraft {
  private readonly lines: PostLines;
  private readonly fragment: UnitFragment;
  private readonly inside: UnitSolution;
  private readonly nodeById: ReadonlyMap<string, ModelNode>;
  private readonly uprights = new Map<number, Upright>();
  private readonly pieces: { readonly upright: Upright; readonly z0: number; readonly z1: number; at: ForceAt }[] = [];
  private readonly nodes: FlowNode[] = [];
  /** By the pair of nodes. */
  private readonly edges = new Map<
    number,
    { from: number; to: number; forceN: number; port: Port; wall: WallSide | null }
  >();

  constructor(fragment: UnitFragment, inside: UnitSolution, lines: PostLines) {
    this.fragment = fragment;
    this.inside = inside;
    this.lines = lines;
    this.nodeById = new Map(fragment.nodes.map((node) => [node.id, node]));
    for (const { x, y, z } of fragment.nodes) insert(this.uprightAt(x, y).levels, z);
  }

  /** A panel of a wall; floors and roofs hand on no vertical force. */
  sheet({ id, nodes, Ev = 0 }: ModelPanel): Sheet[] {
    const [bl, br, tr, tl] = nodes.map((name) => this.node(name));
    if (bl === undefined || br === undefined || tr === undefined || tl === undefined || bl.z === tl.z) return [];
    const wall = wallOf(bl, br, this.lines);
    if (wall === null) return [];
    const heightMm = tl.z - bl.z;
    const widthMm = Math.abs(br.x - bl.x) + Math.abs(br.y - bl.y);
    const stiffness = (Ev * widthMm) / (2 * heightMm);
    const pressed = (top: ModelNode, foot: ModelNode) => stiffness * (this.upOf(foot) - this.upOf(top));
    return [
      {
        wall,
        left: bl,
        right: br,
        bottomMm: bl.z,
        topMm: tl.z,
        leftN: pressed(tl, bl),
        rightN: pressed(tr, br),
        flow: this.inside.panelFlows[id] ?? 0,
        strips: Math.max(1, Math.ceil(heightMm / STRIP_MM)),
      },
    ];
  }

  /** Both uprights of a sheet are met at each of its strips. */
  level(sheet: Sheet): void {
    for (const end of [sheet.left, sheet.right])
      for (let n = 0; n <= sheet.strips; n++) insert(this.uprightAt(end.x, end.y).levels, stripZ(sheet, n));
  }

  upright(beam: ModelBeam): void {
    const [i, j] = [this.node(beam.i), this.node(beam.j)];
    if (i.x !== j.x || i.y !== j.y) return;
    const [atI, atJ] = this.fromMember(beam, i, j);
    const forceN = i.z < j.z ? atI : atJ;
    const upright = this.uprightAt(i.x, i.y);
    this.pieces.push({ upright, z0: Math.min(i.z, j.z), z1: Math.max(i.z, j.z), at: () => forceN });
  }

  /** A sheet's shear leaves its left upright and joins its right one evenly over the height. */
  carry(sheet: Sheet): void {
    const { left, right, bottomMm: z0, topMm: z1, leftN, rightN, flow } = sheet;
    const aboveMiddle = (z: number): number => middleOfStrip(sheet, z) - (z0 + z1) / 2;
    this.pieces.push({ upright: this.uprightAt(left.x, left.y), z0, z1, at: (z) => leftN + flow * aboveMiddle(z) });
    this.pieces.push({ upright: this.uprightAt(right.x, right.y), z0, z1, at: (z) => rightN - flow * aboveMiddle(z) });
    for (let n = 0; n <= sheet.strips; n++) {
      const share = (n === 0 || n === sheet.strips ? 0.5 : 1) * ((z1 - z0) / sheet.strips);
      const z = stripZ(sheet, n);
      this.hand({ ...left, z }, { ...right, z }, flow * share, sheet.wall);
    }
  }

  /** Once every level is known. */
  numberPoints(): void {
    for (const upright of this.uprights.values()) {
      const { x, y, levels } = upright;
      upright.first = this.nodes.length;
      upright.forces = levels.map(() => null);
      for (const z of levels) this.nodes.push({ x, y, z });
    }
  }

  closeUprights(): void {
    for (const { upright, z0, z1, at } of this.pieces) {
      const { levels, forces } = upright;
      for (let n = levelAt(levels, z0); n < levelAt(levels, z1); n++)
        forces[n] = (forces[n] ?? 0) + at(((levels[n] ?? 0) + (levels[n + 1] ?? 0)) / 2);
    }
    for (const { first, forces } of this.uprights.values())
      forces.forEach((forceN, n) => {
        if (forceN !== null) this.add(first + n + 1, first + n, forceN, 2, null);
      });
  }

  /** A level member of a wall hands on what its two ends do not both give to their points. */
  rail(beam: ModelBeam): void {
    const [i, j] = [this.node(beam.i), this.node(beam.j)];
    if (i.x === j.x && i.y === j.y) return;
    const wall = wallOf(i, j, this.lines);
    if (wall === null) return;
    const [atI, atJ] = this.fromMember(beam, i, j);
    const handed = atI < 0 && atJ > 0 ? -atI : atI > 0 && atJ < 0 ? atJ : 0;
    this.hand(i, j, handed, wall);
  }

  flow(sheets: readonly SheetPlace[]): VerticalFlow {
    const edges = [...this.edges.values()].map((edge) => (edge.forceN < 0 ? turnedRound(edge) : edge));
    const sourcesN = this.sources();
    const nodeAt = (at: FlowNode) => this.find(at);
    return { lines: this.lines, nodes: this.nodes, edges, sourcesN, nodeAt, sheets };
  }

  /** What the points get from members and sheets, taken the other way round. */
  private sources(): Float64Array {
    const sources = new Float64Array(this.nodes.length);
    for (const { from, to, forceN } of this.edges.values()) {
      sources[from] = (sources[from] ?? 0) + forceN;
      sources[to] = (sources[to] ?? 0) - forceN;
    }
    return sources;
  }

  /** From a to b within a wall, in the way its panels run. */
  private hand(a: FlowNode, b: FlowNode, forceN: number, wall: WallSide): void {
    const onwards = Math.sign(b.x - a.x + b.y - a.y) * rightwards(wall);
    const [left, right] = onwards > 0 ? [a, b] : [b, a];
    this.add(this.numberOf(left), this.numberOf(right), onwards > 0 ? forceN : -forceN, 1, wall);
  }

  private add(from: number, to: number, forceN: number, port: Port, wall: WallSide | null): void {
    const key = from * this.nodes.length + to;
    const known = this.edges.get(key);
    if (known === undefined) this.edges.set(key, { from, to, forceN, port, wall });
    else known.forceN += forceN;
  }

  private numberOf({ x, y, z }: FlowNode): number {
    const { first, levels } = this.uprightAt(x, y);
    return first + levelAt(levels, z);
  }

  private find({ x, y, z }: FlowNode): number | undefined {
    const upright = this.uprights.get(lineKey(x, y));
    const n = upright === undefined ? -1 : levelAt(upright.levels, z);
    return upright === undefined || n < 0 ? undefined : upright.first + n;
  }

  /** What a member hands down to the points at its ends, N; together what lies on it. */
  private fromMember({ id, up }: ModelBeam, i: ModelNode, j: ModelNode): [number, number] {
    const axes = memberAxes([i.x, i.y, i.z], [j.x, j.y, j.z], up);
    const forces = this.inside.memberEndForces[id];
    if (axes === null || forces === undefined) throw new RangeError(`the container has no line ${id}`);
    const upwards = (at: number): number =>
      axes.x[2] * (forces[at] ?? 0) + axes.y[2] * (forces[at + 1] ?? 0) + axes.z[2] * (forces[at + 2] ?? 0);
    return [upwards(0), upwards(SECOND_END)];
  }

  private upOf({ id }: ModelNode): number {
    return this.inside.displacements[id]?.[2] ?? 0;
  }

  private node(id: string): ModelNode {
    const node = this.nodeById.get(id);
    if (node === undefined) throw new RangeError(`container ${this.fragment.key} has no point ${id}`);
    return node;
  }

  private uprightAt(x: number, y: number): Upright {
    const key = lineKey(x, y);
    const known = this.uprights.get(key) ?? { x, y, levels: [], first: 0, forces: [] };
    this.uprights.set(key, known);
    return known;
  }
}

type ForceAt = (zMm: number) => number;

const SECOND_END = 6;

const turnedRound = ({ from, to, forceN, port, wall }: FlowEdge): FlowEdge => ({
  from: to,
  to: from,
  forceN: -forceN,
  port: port === 1 ? 3 : 0,
  wall,
});

const stripZ = ({ bottomMm, topMm, strips }: Sheet, n: number): number => bottomMm + ((topMm - bottomMm) * n) / strips;

/** Force is handed over at the levels between strips, whatever other levels an upright has. */
function middleOfStrip(sheet: Sheet, z: number): number {
  const n = Math.floor(((z - sheet.bottomMm) / (sheet.topMm - sheet.bottomMm)) * sheet.strips);
  return (stripZ(sheet, n) + stripZ(sheet, n + 1)) / 2;
}

/** Points are told apart to a tenth of a millimetre, as the model names them. */
const SAME_MM = 0.06;
const tenths = (mm: number): number => Math.round(mm * 10) + KEY_ROOM / 2;
/** Tenths of a millimetre in 26 m: no container is longer, wider or higher. */
const KEY_ROOM = 262_144;
const lineKey = (x: number, y: number): number => tenths(x) * KEY_ROOM + tenths(y);

const levelAt = (levels: readonly number[], z: number): number =>
  levels.findIndex((level) => Math.abs(level - z) < SAME_MM);

function insert(levels: number[], z: number): void {
  const at = levels.findIndex((level) => level > z - SAME_MM);
  if (at === -1) levels.push(z);
  else if (Math.abs((levels[at] ?? z) - z) >= SAME_MM) levels.splice(at, 0, z);
}
