/** The answer of one combination in the exchange format; units N, mm, radians, global axes unless said. */
export interface FrameSolution {
  readonly iterations: number;
  readonly displacements: Readonly<Record<string, readonly number[]>>;
  /** Forces of the ground on the node: supports and springs to the ground. */
  readonly reactions: Readonly<Record<string, readonly number[]>>;
  /** Twelve forces on the member at end i then end j, local axes. */
  readonly memberEndForces: Readonly<Record<string, readonly number[]>>;
  /** Shear flow, N/mm. */
  readonly panelFlows: Readonly<Record<string, number>>;
  /** Six forces on node j. */
  readonly links: Readonly<Record<string, readonly number[]>>;
  readonly open: { readonly supports: readonly string[]; readonly links: readonly string[] };
  /** Sum of loads and reactions: three forces, three moments about the origin. */
  readonly equilibrium: readonly number[];
  /** Largest unbalanced force over the largest load. */
  readonly residual: number;
}

/** No equilibrium: what moves, and which way (ux uy uz rx ry rz, largest component 1). */
export interface FrameRefusal {
  readonly refused: string;
  readonly moves: { readonly nodes: readonly string[]; readonly direction: readonly number[] };
}

export interface FrameResult {
  readonly combos: Readonly<Record<string, FrameSolution | FrameRefusal>>;
}
