/** Directions of the wind in the building's own axes: `+x` blows towards larger x. */
export const windDirections = ["+x", "-x", "+y", "-y"] as const;
export type WindDirection = (typeof windDirections)[number];
export type Axis = "x" | "y";

/** The box that encloses the building, in its own axes. */
export type WindShape = {
  readonly lengthXMm: number;
  readonly lengthYMm: number;
  /** Mean roof height above ground; for flat roofs the eaves' height. */
  readonly heightMm: number;
};

/** How a wall or roof may be open to the wind, m². `doors` are closed in a storm, if nobody forgets them. */
export type EnvelopeSide = {
  readonly side: WindDirection;
  readonly grossM2: number;
  readonly openM2: number;
  readonly doorsM2: number;
};

/** The four sides, named by the direction of their outward normals, and the roof. */
export type Envelope = {
  readonly sides: readonly EnvelopeSide[];
  readonly roof: { readonly grossM2: number; readonly openM2: number };
};

export type Enclosure = "open" | "partially open" | "partially enclosed" | "enclosed";
