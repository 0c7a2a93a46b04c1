import type { SeenObject } from "@cornerway/engine";

/** Below this scale joints and loads are smaller than their signs: only beams are drawn, px a metre. */
const leastPxPerM = 12;

/** Small drawings leave out what would only be a blot. */
export const atScale = (objects: readonly SeenObject[], pxPerM: number): SeenObject[] =>
  objects.filter(({ object }) => pxPerM >= leastPxPerM || object.kind === "beam");
