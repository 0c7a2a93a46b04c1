import type { Element } from "../elements/element.ts";
import type { Vector } from "../numerics/vector.ts";

/**
 * A part of a building that touches the rest at its retained nodes only and nothing else (no supports inside), in its own
 * axes, mm. Parts with the same key are taken to be the same part.
 */
export interface Substructure {
  readonly key: string;
  readonly places: readonly Vector[];
  readonly elements: readonly Element[];
  readonly sheetOnly: Uint8Array;
  /** Node numbers, ascending. */
  readonly retained: readonly number[];
  /** Those of them whose rotations are joined to the rest as well; of the others only translations are. */
  readonly momentNodes: readonly number[];
}
