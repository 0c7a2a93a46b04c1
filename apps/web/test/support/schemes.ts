import { emptyScheme } from "@cornerway/schema";
import type { Container, Pad, Scheme } from "@cornerway/schema";

/** A 40 ft high cube, 12.192 × 2.438 × 2.896 m (ISO 668), at a place in mm. */
export const unitAt = (id: string, tag: string, xMm: number, yMm: number, zMm: number, turnDeg = 0): Container => ({
  id,
  tag,
  type: "1AAA",
  xUm: xMm * 1000,
  yUm: yMm * 1000,
  zUm: zMm * 1000,
  turnMdeg: turnDeg * 1000,
});

export const schemeOf = (containers: Container[], pads: Pad[] = []): Scheme => ({
  ...emptyScheme,
  containers: containers.toSorted((a, b) => (a.id < b.id ? -1 : 1)),
  pads: pads.toSorted((a, b) => (a.id < b.id ? -1 : 1)),
});
