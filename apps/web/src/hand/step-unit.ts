import type { Container } from "@cornerway/schema";
import type { Side } from "../drawing/contract.ts";
import { inSite, type StepsMm } from "./eye-axes.ts";

/** A unit stepped as one sees it from a side. */
export function stepUnit(unit: Container, side: Side, steps: StepsMm): Container {
  const { xMm, yMm } = inSite(side, steps);
  return { ...unit, xUm: unit.xUm + Math.round(xMm * 1000), yUm: unit.yUm + Math.round(yMm * 1000) };
}
