import type { CondensedUnit } from "../analysis/building-system.ts";
import { isLoaded, type LoadBasis } from "../analysis/load-basis.ts";
import { equationsOf } from "../analysis/prepare.ts";
import type { LocalUnitLoads } from "../analysis/unit-loads.ts";
import type { Element } from "../elements/element.ts";
import { endForcesByFreedom, fixedForces, toLocalComponents, type Member } from "../elements/member.ts";
import type { ShearPanel } from "../elements/shear-panel.ts";
import { Scratch } from "../numerics/scratch.ts";
import { recoverInner } from "../numerics/sparse-solve.ts";
import { writeForces } from "./force-sums.ts";

type CondensedPart = CondensedUnit["condensed"];

/** Forces worked out of each line: three forces and three moments at its first end; local axes. Those at its second follow. */
const FORCES_OF_LINE = 6;
const FREEDOMS_OF_LINE = 12;
/** Forces both ends of a loaded line take of its load together, and all that is known of it with its ends held. */
export const FORCES_OF_ENDS = 3;
const FIXED_OF_LINE = FORCES_OF_LINE + FORCES_OF_ENDS;

/** Rows of what is worked out inside a container: the flow of each sheet, then six forces of each line. */
export type ForceLayout = {
  /** Where the first of each stands. */
  readonly lines: ReadonlyMap<string, number>;
  readonly panels: ReadonlyMap<string, number>;
  readonly length: number;
};

/** How forces inside a container come about, whatever the loads: all that its lines and sheets say of it. */
export type InnerInfluence = InnerRows & {
  /** Every force of the layout under each movement by which the container is joined to others by one, the others held; force by force. */
  readonly byMovement: Float64Array;
};

/** The forces of lines and sheets as sums over movements and loads on lines. */
export type InnerRows = {
  readonly layout: ForceLayout;
  readonly rows: readonly Rows[];
  /**
   * By line, under 1 N/mm along each axis of the container: six forces at its first end with both ends held, and the three both
   * ends take of it together.
   */
  readonly fixed: ReadonlyMap<string, Float64Array>;
};

/** What every line and sheet takes when one bearing point of the container moves by one and the others are held. */
export function innerInfluence(condensed: CondensedPart): InnerInfluence {
  const inner = innerRows(condensed);
  const { equations, eliminated } = condensed.factor.tree;
  const count = equations - eliminated;
  const x = MOVEMENTS.room(equations * count).fill(0, 0, equations * count);
  for (let k = 0; k < count; k++) x[(eliminated + k) * count + k] = 1;
  recoverInner(condensed.factor, x, count);
  return { ...inner, byMovement: forcesOf(inner, x, count) };
}

export function innerRows(condensed: CondensedPart): InnerRows {
  const { members, panels } = condensed.part.frame;
  const layout = layoutOf(members.keys(), panels.keys());
  const fixed = new Map<string, Float64Array>();
  for (const [id, member] of members) fixed.set(id, ofKind(FIXED, member, fixedUnderUnitLoads));
  return { layout, rows: rowsOf(condensed), fixed };
}

/** Room for movements on their way: forces are all that is kept. */
const MOVEMENTS = new Scratch();

/**
 * Every force of the layout with the bearing points held, under each load of the container's basis, force by force; then what the
 * ends of each loaded line take together.
 */
export function heldForces(
  inner: InnerRows,
  { factor }: Pick<CondensedPart, "factor">,
  { basis, condensed }: LocalUnitLoads,
): Float64Array {
  const { equations, eliminated } = factor.tree;
  const count = basis.loads.length;
  const x = MOVEMENTS.room(equations * count).fill(0, eliminated * count, equations * count);
  x.set(condensed.reduced.subarray(0, eliminated * count));
  recoverInner(factor, x, count);
  const forces = new Float64Array((inner.layout.length + FORCES_OF_ENDS * basis.slots.lines.size) * count);
  writeForcesOf(inner, x, count, forces);
  addFixedForces(forces, inner, basis);
  return forces;
}

/**
 * Adds what lines loaded between their ends take with the ends held, under each load of the basis, force by force; and, behind all
 * rows of the layout, what both ends of each take together.
 */
export function addFixedForces(forces: Float64Array, { layout, fixed }: InnerRows, { loads, slots }: LoadBasis): void {
  let ends = layout.length;
  slots.lines.forEach((slot, line) => {
    const [at, own] = [layout.lines.get(line), fixed.get(line)];
    if (at === undefined || own === undefined) throw new Error(`the container has no line "${line}" to load`);
    loads.forEach(
      (load, k) => isLoaded(load, slot, 3) && addFixed(forces, loads.length, k, { at, ends, own }, load, slot),
    );
    ends += FORCES_OF_ENDS;
  });
}

/** Rows that loads on lines write to with the ends of lines held. */
export function rowsOfLoaded({ layout }: InnerRows, { slots }: LoadBasis): Int32Array {
  const rows: number[] = [];
  let ends = layout.length;
  for (const line of slots.lines.keys()) {
    const at = layout.lines.get(line) ?? NaN;
    for (let n = 0; n < FORCES_OF_LINE; n++) rows.push(at + n);
    for (let c = 0; c < FORCES_OF_ENDS; c++) rows.push(ends++);
  }
  return Int32Array.from(rows);
}

/** Rows of forces that hang on the same equations, −1 where a freedom has none: `byFreedom` freedom by freedom. */
type Rows = {
  readonly at: number;
  readonly count: number;
  readonly equations: Int32Array;
  readonly byFreedom: Float64Array;
};

/** The forces of every line and sheet as sums over the equations of the container, in the order of the layout. */
function rowsOf({ part, equationOf }: CondensedPart): Rows[] {
  const { members, panels } = part.frame;
  const rows: Rows[] = [];
  let at = 0;
  for (const panel of panels.values()) {
    const byFreedom = ofKind(FLOW_BY_FREEDOM, panel, ofUnitFlow);
    rows.push({ at, count: 1, equations: equationsOf(panel.freedoms, equationOf), byFreedom });
    at++;
  }
  for (const member of members.values()) {
    const byFreedom = ofKind(BY_FREEDOM, member, ofUnitMovements);
    rows.push({ at, count: FORCES_OF_LINE, equations: equationsOf(member.freedoms, equationOf), byFreedom });
    at += FORCES_OF_LINE;
  }
  return rows;
}

/** Forces under several movements at once, x[equation·sides + side]; force by force: forces[n·sides + side]. */
export function forcesOf(inner: InnerRows, x: Float64Array, sides: number): Float64Array {
  const forces = new Float64Array(inner.layout.length * sides);
  writeForcesOf(inner, x, sides, forces);
  return forces;
}

function writeForcesOf({ rows }: InnerRows, x: Float64Array, sides: number, forces: Float64Array): void {
  for (const own of rows)
    for (let n = 0; n < own.count; n++) writeForces(forces, (own.at + n) * sides, own, n, x, sides);
}

/** Worked out once for all elements of one stiffness, which are of one kind, in whatever container. */
function ofKind<E extends Element>(
  known: WeakMap<Float64Array, Float64Array>,
  element: E,
  work: (element: E) => Float64Array,
): Float64Array {
  const found = known.get(element.matrix);
  if (found !== undefined) return found;
  const made = work(element);
  known.set(element.matrix, made);
  return made;
}

const FIXED = new WeakMap<Float64Array, Float64Array>();
const BY_FREEDOM = new WeakMap<Float64Array, Float64Array>();
const FLOW_BY_FREEDOM = new WeakMap<Float64Array, Float64Array>();

const ofUnitFlow = ({ strainOf, facts }: ShearPanel): Float64Array =>
  strainOf.map((strain) => strain * facts.shearStiffness);

/** Six forces and the three of both ends under a unit load along x, then y, then z of the container. */
function fixedUnderUnitLoads(member: Member): Float64Array {
  const columns = new Float64Array(3 * FIXED_OF_LINE);
  const along = [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ] as const;
  along.forEach((q, axis) => {
    const forces = fixedForces(member, toLocalComponents(member.facts.axes, q));
    const at = axis * FIXED_OF_LINE;
    columns.set(forces.subarray(0, FORCES_OF_LINE), at);
    for (let c = 0; c < FORCES_OF_ENDS; c++)
      columns[at + FORCES_OF_LINE + c] = (forces[c] ?? 0) + (forces[FORCES_OF_LINE + c] ?? 0);
  });
  return columns;
}

/** Of one line under one load: its six forces from row `at` on, and what both ends take from row `ends` on. */
function addFixed(
  forces: Float64Array,
  sides: number,
  side: number,
  { at, ends, own }: { readonly at: number; readonly ends: number; readonly own: Float64Array },
  load: Float64Array,
  slot: number,
): void {
  const x = load[slot] ?? 0;
  const y = load[slot + 1] ?? 0;
  const z = load[slot + 2] ?? 0;
  for (let n = 0; n < FIXED_OF_LINE; n++) {
    const row = n < FORCES_OF_LINE ? at + n : ends + n - FORCES_OF_LINE;
    const to = row * sides + side;
    forces[to] =
      (forces[to] ?? 0) + x * (own[n] ?? 0) + y * (own[n + FIXED_OF_LINE] ?? 0) + z * (own[n + 2 * FIXED_OF_LINE] ?? 0);
  }
}

function layoutOf(lines: Iterable<string>, panels: Iterable<string>): ForceLayout {
  const panelAt = new Map<string, number>();
  for (const id of panels) panelAt.set(id, panelAt.size);
  const first = panelAt.size;
  const lineAt = new Map<string, number>();
  for (const id of lines) lineAt.set(id, first + lineAt.size * FORCES_OF_LINE);
  return { lines: lineAt, panels: panelAt, length: first + lineAt.size * FORCES_OF_LINE };
}

/** Six forces by each of the line's twelve freedoms, freedom by freedom. */
function ofUnitMovements(member: Member): Float64Array {
  const rows = new Float64Array(FORCES_OF_LINE * FREEDOMS_OF_LINE);
  const forces = endForcesByFreedom(member);
  for (let f = 0; f < FREEDOMS_OF_LINE; f++)
    for (let n = 0; n < FORCES_OF_LINE; n++) rows[f * FORCES_OF_LINE + n] = forces[f * FREEDOMS_OF_LINE + n] ?? 0;
  return rows;
}
