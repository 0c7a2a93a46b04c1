import { containerDimensions } from "@cornerway/engine";
import type { ContainerType } from "@cornerway/schema";

/** "1AAA, 40 ft, 2.896 m high" */
export function typeWords(type: ContainerType): string {
  const { lengthMm, heightMm } = containerDimensions(type);
  return `${type}, ${Math.round(lengthMm / 304.8)} ft, ${(heightMm / 1000).toFixed(3)} m high`;
}
