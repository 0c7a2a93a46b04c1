import type { Element } from "../elements/element.ts";
import type { Six } from "../model/analytical-model.ts";

/** Everything the solution needs to know: freedoms are 6·node + 0…5 (ux uy uz rx ry rz, global axes). */
export interface System {
  readonly nodeCount: number;
  readonly elements: readonly Element[];
  /** 1 for each freedom that is always held. */
  readonly held: Uint8Array;
  /** 1 for each node on which nothing but sheets act, so that nothing is asked of it out of their planes. */
  readonly sheetOnly: Uint8Array;
  readonly bearings: readonly Bearing[];
  /** Holds in plan that move to other bearings when the ones that have them lift. */
  readonly plannedHolds?: (lifted: Uint8Array) => PlannedHolds;
}

/**
 * A contact that pushes but never pulls, upright. What it holds besides (elements that act, freedoms that are fixed) is
 * lost once it lifts.
 */
export type Bearing = (
  { readonly kind: "support"; readonly freedom: number } | ({ readonly kind: "link" } & Spring)
) & { readonly holds: Holds };

/** Springs that act and freedoms that are fixed only until the bearing first lifts. */
export interface Holds {
  readonly springs: readonly Spring[];
  readonly freedoms: readonly number[];
}

/** A spring between two freedoms, N/mm or N·mm/rad. */
export interface Spring {
  readonly lower: number;
  readonly upper: number;
  readonly stiffness: number;
}

/** The springs between two nodes in those of the six directions in which they are stiff. */
export function springsBetween(i: number, j: number, stiffness: Six): Spring[] {
  return stiffness.flatMap((k, c) => (k > 0 ? [{ lower: i * 6 + c, upper: j * 6 + c, stiffness: k }] : []));
}

/** What holds a building in plan in one state, and by which bearings. */
export interface PlannedHolds extends Holds {
  readonly by: ReadonlySet<number>;
}

/** A bearing that holds nothing but the load on it. */
export const HOLDS_NOTHING: Holds = { springs: [], freedoms: [] };

/** Whether a bearing holds anything besides in this state, which it gives up when it lifts. */
export function holdsSomething({ bearings, plannedHolds }: System, b: number, lost: Uint8Array): boolean {
  const holds = bearings[b]?.holds ?? HOLDS_NOTHING;
  return holds.springs.length > 0 || holds.freedoms.length > 0 || (plannedHolds?.(lost).by.has(b) ?? false);
}

/** Which bearings are open (1), and which have lifted and lost what they held besides (1). */
export interface ContactState {
  readonly open: Uint8Array;
  readonly lost: Uint8Array;
}

export function allClosed(system: System): ContactState {
  const count = system.bearings.length;
  return { open: new Uint8Array(count), lost: new Uint8Array(count) };
}

/**
 * The elements in this state, in one order whatever the state: what has opened or is lost keeps its place as an element that
 * does nothing, so that two states of one system differ in few elements. Holds that move about come last.
 */
export function actingElements({ elements, bearings, plannedHolds }: System, { open, lost }: ContactState): Element[] {
  const acting = [...elements];
  bearings.forEach((bearing, b) => {
    for (const hold of bearing.holds.springs) acting.push(springElement(hold, lost[b] !== 1));
    if (bearing.kind === "link") acting.push(springElement(bearing, open[b] !== 1));
  });
  for (const hold of plannedHolds?.(lost).springs ?? []) acting.push(springElement(hold, true));
  return acting;
}

/** The springs that act in one state and not in the other, bearing by bearing, those of holds that move about last. */
export function springsOnlyIn(system: System, one: ContactState, other: ContactState): Spring[] {
  const springs: Spring[] = [];
  system.bearings.forEach((bearing, b) => {
    if (!one.lost[b] && other.lost[b]) springs.push(...bearing.holds.springs);
    if (bearing.kind === "link" && !one.open[b] && other.open[b]) springs.push(bearing);
  });
  const [now, then] = [one, other].map(({ lost }) => system.plannedHolds?.(lost).springs);
  return now === then ? springs : [...springs, ...(now ?? [])];
}

/** The held freedoms in this state: always held, or under a closed bearing on the ground. */
export function heldFreedoms({ held, bearings, plannedHolds }: System, { open, lost }: ContactState): Uint8Array {
  const now = held.slice();
  for (const freedom of plannedHolds?.(lost).freedoms ?? []) now[freedom] = 1;
  bearings.forEach((bearing, b) => {
    if (bearing.kind === "support" && !open[b]) now[bearing.freedom] = 1;
    if (!lost[b]) for (const freedom of bearing.holds.freedoms) now[freedom] = 1;
  });
  return now;
}

/** Made once for each spring, acting and at rest: every state is a list of these. */
function springElement(spring: Spring, acts: boolean): Element {
  const known = elementsOf.get(spring) ?? elementsFor(spring);
  elementsOf.set(spring, known);
  return acts ? known.acting : known.resting;
}

type Elements = { readonly acting: Element; readonly resting: Element };

const elementsOf = new WeakMap<Spring, Elements>();

function elementsFor({ lower, upper, stiffness: k }: Spring): Elements {
  const freedoms = Int32Array.of(lower, upper);
  return {
    acting: { freedoms, matrix: Float64Array.of(k, -k, -k, k) },
    resting: { freedoms, matrix: new Float64Array(4), acts: false },
  };
}
