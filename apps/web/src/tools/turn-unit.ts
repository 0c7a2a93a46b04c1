import type { Container } from "@cornerway/schema";

const wholeTurnMdeg = 360_000;

/** The unit turned anticlockwise about its own centre by `byMdeg`. */
export const turnUnit = (unit: Container, byMdeg: number): Container => ({
  ...unit,
  turnMdeg: (((unit.turnMdeg + byMdeg) % wholeTurnMdeg) + wholeTurnMdeg) % wholeTurnMdeg,
});
