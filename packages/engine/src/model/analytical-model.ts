/** The line model of the exchange format. Units N, mm, MPa, radians; axes x east, y north, z up. */
export interface AnalyticalModel {
  readonly nodes: readonly ModelNode[];
  readonly sections: Readonly<Record<string, ModelSection>>;
  readonly beams: readonly ModelBeam[];
  readonly panels: readonly ModelPanel[];
  readonly springs: readonly ModelSpring[];
  readonly links: readonly ModelLink[];
  readonly supports: readonly ModelSupport[];
  readonly cases: Readonly<Record<string, ModelCase>>;
  /** Each combination is one load vector: case name → factor. */
  readonly combos: Readonly<Record<string, Readonly<Record<string, number>>>>;
}

export type Triple = readonly [number, number, number];
export type Six = readonly [number, number, number, number, number, number];

/** The six freedoms of a node in the order used everywhere. */
export const FREEDOM_NAMES = ["ux", "uy", "uz", "rx", "ry", "rz"] as const;
export type FreedomName = (typeof FREEDOM_NAMES)[number];

export interface ModelNode {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/**
 * E and G in MPa, A in mm², Iy (deflection along local z), Iz (along local y) and J in mm⁴; shear areas in mm², absent
 * for no shear deformation.
 */
export interface ModelSection {
  readonly E: number;
  readonly G: number;
  readonly A: number;
  readonly Iy: number;
  readonly Iz: number;
  readonly J: number;
  readonly Asy?: number;
  readonly Asz?: number;
}

/** Local x runs i → j; local z is the part of `up` at right angles to x; `rel_*` are not transmitted at that end. */
export interface ModelBeam {
  readonly id: string;
  readonly i: string;
  readonly j: string;
  readonly section: string;
  readonly up?: Triple;
  readonly rel_i?: readonly FreedomName[];
  readonly rel_j?: readonly FreedomName[];
  /** Rigid arms from node to member end, global axes, mm. */
  readonly off_i?: Triple;
  readonly off_j?: Triple;
}

/** A rectangle with corners bottom left, bottom right, top right, top left; Gt in N/mm, Ev and Eh in N/mm per mm. */
export interface ModelPanel {
  readonly id: string;
  readonly nodes: readonly [string, string, string, string];
  readonly Gt: number;
  readonly Ev?: number;
  readonly Eh?: number;
  readonly off?: readonly [Triple, Triple, Triple, Triple];
}

/** Stiffness in global axes (N/mm, N·mm/rad) from node i to the ground, or to node j. */
export interface ModelSpring {
  readonly id: string;
  readonly i: string;
  readonly j?: string;
  readonly k: Six;
}

/** A bearing of node j (upper) on node i (lower); compression-only acts on uz alone. */
export interface ModelLink {
  readonly id: string;
  readonly i: string;
  readonly j: string;
  readonly k: Six;
  readonly compression_only?: boolean;
}

export interface ModelSupport {
  readonly node: string;
  readonly fix: readonly FreedomName[];
  readonly compression_only?: boolean;
}

export interface ModelCase {
  readonly nodal?: readonly { readonly node: string; readonly F: Six }[];
  /** N/mm of member length, global axes. */
  readonly beam_udl?: readonly { readonly beam: string; readonly q: Triple }[];
  /** Movement of a held freedom, mm or radians. */
  readonly settle?: readonly { readonly node: string; readonly dof: FreedomName; readonly value: number }[];
}
