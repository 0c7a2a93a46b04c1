import { faceFrame, placeContainer } from "@cornerway/engine";
import type { Operation, Scheme } from "@cornerway/schema";
import type { Side } from "../drawing/contract.ts";
import { layGroup } from "../tools/lay-group.ts";
import { shiftedBy } from "../tools/laying.ts";
import { nudgeElement } from "../tools/nudge-element.ts";
import { inSite } from "./eye-axes.ts";
import type { StepsMm } from "./eye-axes.ts";

/** Moves all that is chosen by steps of the arrow keys; several things go together. */
export function stepElements(scheme: Scheme, ids: readonly string[], side: Side, steps: StepsMm): Operation[] {
  const [only, ...others] = ids;
  if (only === undefined) return [];
  if (others.length === 0) return stepElement(scheme, only, side, steps);
  const { xMm, yMm } = inSite(side, steps);
  return layGroup(scheme, ids, shiftedBy(Math.round(xMm * 1000), Math.round(yMm * 1000)));
}

/**
 * Moves the chosen element by steps of the arrow keys: right and away as the elevation's eye has them; an opening goes
 * along and up its wall.
 */
export const stepElement = (scheme: Scheme, id: string, side: Side, steps: StepsMm): Operation[] =>
  nudgeElement(scheme, id, inSite(side, steps), { uMm: steps.rightMm * facing(scheme, id, side), vMm: steps.upMm });

/** 1 where the wall of an opening runs to the right as this side sees it, −1 where it runs to the left. */
function facing(scheme: Scheme, id: string, side: Side): number {
  const opening = scheme.openings.find((cut) => cut.id === id);
  const unit = scheme.containers.find((container) => container.id === opening?.containerId);
  if (opening === undefined || unit === undefined) return 1;
  const { u } = faceFrame(placeContainer(unit), opening.face);
  const right = inSite(side, { rightMm: 1, upMm: 0 });
  return u.xMm * right.xMm + u.yMm * right.yMm < -0.5 ? -1 : 1;
}
