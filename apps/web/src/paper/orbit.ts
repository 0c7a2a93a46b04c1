import type { EyePlace } from "@cornerway/engine";

/** One never looks level with the ground nor straight down: the plan and the elevations do that, thousandths of a degree. */
const [leastTilt, mostTilt] = [5_000, 80_000];
const wholeTurn = 360_000;
/** A px of dragging turns the building by half a degree. */
const mdegPerPx = 500;

/** The eye moved round the building and up or down. */
export const orbited = ({ turnMdeg, tiltMdeg }: EyePlace, byTurnMdeg: number, byTiltMdeg: number): EyePlace => ({
  turnMdeg: (((Math.round(turnMdeg + byTurnMdeg) % wholeTurn) + wholeTurn * 1.5) % wholeTurn) - wholeTurn / 2,
  tiltMdeg: Math.min(mostTilt, Math.max(leastTilt, Math.round(tiltMdeg + byTiltMdeg))),
});

/** The building follows the hand: dragged to the right it turns to the right, dragged down one looks from higher up. */
export const orbitedByPx = (place: EyePlace, rightPx: number, downPx: number): EyePlace =>
  orbited(place, -rightPx * mdegPerPx, downPx * mdegPerPx);
