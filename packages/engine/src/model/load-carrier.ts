/** Faces of a container that take pressure, as openings name them. */
export type LoadedFace = "left" | "right" | "front" | "door" | "roof" | "floor";

/** A member that takes its part of the pressure on a face: a strip of this width, mm, on either side of its line. */
export interface LoadCarrier {
  readonly beam: string;
  readonly face: LoadedFace;
  readonly stripMm: number;
  readonly lengthMm: number;
  /** Middle of the strip in the container's own axes, mm. */
  readonly x: number;
  readonly y: number;
  readonly z: number;
}
