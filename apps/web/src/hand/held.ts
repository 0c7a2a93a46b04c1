import type { Container, Face, Operation, PointMm } from "@cornerway/schema";
import type { FacePointMm } from "../tools/cut-opening.ts";
import type { StepsMm } from "./eye-axes.ts";
import type { Projection } from "../drawing/view-transform.ts";

/** What the hand holds between press and drop. */
export type Held =
  /** A new unit that follows the pointer until it is set. */
  | { kind: "unit"; unit: Container }
  /** An element being moved; `from` is where it was taken, as a point of the view. */
  | { kind: "element"; id: string; projection: Projection; from: PointMm; operations: Operation[] }
  /** A rectangle being drawn on a wall. */
  | { kind: "cut"; containerId: string; face: Face; from: FacePointMm; to: FacePointMm; operations: Operation[] }
  /** Steps of the arrow keys, committed when the key comes up. */
  | { kind: "steps"; id: string; steps: StepsMm; operations: Operation[] };
