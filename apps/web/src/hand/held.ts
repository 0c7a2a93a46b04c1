import type { Container, Face, Operation, PointMm } from "@cornerway/schema";
import type { FacePointMm } from "../tools/cut-opening.ts";
import type { PlaceUm } from "../tools/laying.ts";
import type { HeldEdges } from "../tools/resize-opening.ts";
import type { StepsMm } from "./eye-axes.ts";
import type { Projection } from "../drawing/view-transform.ts";

/** What the hand holds between press and drop. */
export type Held =
  /** A new unit that follows the pointer until it is set. */
  | { kind: "unit"; unit: Container }
  /** An element being moved; `from` is where it was taken, as a point of the view. */
  | {
      kind: "element";
      id: string;
      projection: Projection;
      from: PointMm;
      /** Where its fittings would land on fittings below, for a unit to catch on. */
      places: readonly PlaceUm[];
      operations: Operation[];
    }
  /** Several elements moved together; `id` is the one that was taken and catches on others. */
  | {
      kind: "group";
      id: string;
      ids: readonly string[];
      projection: Projection;
      from: PointMm;
      operations: Operation[];
    }
  /** Edges of an opening drawn by a handle. */
  | { kind: "edges"; id: string; edges: HeldEdges; operations: Operation[] }
  /** A beam between two points, of which the first may be there. */
  | { kind: "beam"; from: PointMm | null; operations: Operation[] }
  /** A rectangle drawn round what is to be chosen; `also` keeps what is chosen already. */
  | { kind: "band"; projection: Projection; from: PointMm; to: PointMm; also: boolean; operations: Operation[] }
  /** A rectangle being drawn on a wall. */
  | { kind: "cut"; containerId: string; face: Face; from: FacePointMm; to: FacePointMm; operations: Operation[] }
  /** Steps of the arrow keys, committed when the key comes up. */
  | { kind: "steps"; ids: readonly string[]; steps: StepsMm; operations: Operation[] };
