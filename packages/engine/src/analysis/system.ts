import type { Element } from "../elements/element.ts";

/** Everything the solution needs to know: freedoms are 6·node + 0…5 (ux uy uz rx ry rz, global axes). */
export interface System {
  readonly nodeCount: number;
  readonly elements: readonly Element[];
  /** 1 for each freedom that is always held. */
  readonly held: Uint8Array;
  /** 1 for each node on which nothing but sheets act, so that nothing is asked of it out of their planes. */
  readonly sheetOnly: Uint8Array;
  readonly bearings: readonly Bearing[];
}

/** A contact that pushes but never pulls, upright. `holds` act only while it is closed. */
export type Bearing =
  | { readonly kind: "support"; readonly freedom: number; readonly holds: readonly Element[] }
  | {
      readonly kind: "link";
      readonly lower: number;
      readonly upper: number;
      readonly stiffness: number;
      readonly holds: readonly Element[];
    };

/** Which bearings are open (1), and which have lost their `holds` (1). */
export interface ContactState {
  readonly open: Uint8Array;
  readonly lost: Uint8Array;
}

export function allClosed(system: System): ContactState {
  const count = system.bearings.length;
  return { open: new Uint8Array(count), lost: new Uint8Array(count) };
}

/** The elements that act in this state, in a fixed order. */
export function actingElements({ elements, bearings }: System, { open, lost }: ContactState): Element[] {
  const acting = [...elements];
  bearings.forEach((bearing, b) => {
    if (!lost[b]) acting.push(...bearing.holds);
    if (bearing.kind === "link" && !open[b])
      acting.push(bearingSpring(bearing.lower, bearing.upper, bearing.stiffness));
  });
  return acting;
}

/** The held freedoms in this state: always held, or under a closed bearing on the ground. */
export function heldFreedoms({ held, bearings }: System, { open }: ContactState): Uint8Array {
  const now = held.slice();
  bearings.forEach((bearing, b) => {
    if (bearing.kind === "support" && !open[b]) now[bearing.freedom] = 1;
  });
  return now;
}

function bearingSpring(lower: number, upper: number, k: number): Element {
  return { freedoms: Int32Array.of(lower, upper), matrix: Float64Array.of(k, -k, -k, k) };
}
