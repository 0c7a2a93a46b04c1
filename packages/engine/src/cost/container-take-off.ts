import type { Container } from "@cornerway/schema";
import { containerDimensions } from "../catalog/container-dimensions.ts";
import { known, lineOf, type TakenOff } from "./take-off-line.ts";

/**
 * Doors welded shut: both leaves welded to the frame all round and to each other, and painted there. Between posts, sill and header.
 * In the yard. Common practice, no published source.
 */
export function containerTakeOff({ id, type, doors }: Container): TakenOff {
  if (doors === undefined) return known([]);
  const { u0, u1, v0, v1 } = containerDimensions(type).sheetZone("door");
  const [widthM, heightM] = [(u1 - u0) / 1000, (v1 - v0) / 1000];
  const seamM = 2 * (widthM + heightM) + heightM;
  const line = lineOf(id, id, "shop");
  return known([line("weld of 5 mm", seamM, "m"), line("paint repair", seamM, "m")]);
}
