import type { PlannedBearing } from "./bearing-plan.ts";

/** Which of the two level directions, global x and y, a bearing holds. */
export interface PlanHold {
  readonly x: boolean;
  readonly y: boolean;
}

export interface PlacedBearing {
  readonly bearing: PlannedBearing;
  /** Whose hold this bearing is: a container's or a post's. */
  readonly of: string;
  readonly onCorner: boolean;
  /** Found to lift under some load: it cannot be relied on to hold. */
  readonly lifts: boolean;
  readonly xMm: number;
  readonly yMm: number;
}

/**
 * Locks at play: every container is held by one bearing both ways and by its farthest bearing across the line between the
 * two, which is determinate in plan: upright loads cause no level reactions. Bearings that lift are passed over. Posts by
 * themselves hold both ways. Returns the
 * containers with fewer than two bearings, which nothing keeps from turning.
 */
export function locksAtPlay(bearings: readonly PlacedBearing[]): { holds: PlanHold[]; unheld: string[] } {
  const holds = bearings.map(({ bearing }): PlanHold => ("post" in bearing.above ? BOTH : NONE));
  const unheld: string[] = [];
  for (const of of new Set(bearings.filter(({ bearing }) => !("post" in bearing.above)).map((one) => one.of))) {
    const own = bearings.flatMap((one, index) =>
      one.of === of && !one.lifts && !("post" in one.bearing.above) ? [{ one, index }] : [],
    );
    const first = own.find(({ one }) => one.onCorner) ?? own[0];
    if (first === undefined) continue;
    holds[first.index] = BOTH;
    const far = farthest(own, first);
    if (far === undefined) unheld.push(of);
    else holds[far.index] = acrossFrom(first.one, far.one);
  }
  return { holds, unheld };
}

export function tied(bearings: readonly PlacedBearing[]): { holds: PlanHold[]; unheld: string[] } {
  return { holds: bearings.map(() => BOTH), unheld: [] };
}

const BOTH: PlanHold = { x: true, y: true };
const NONE: PlanHold = { x: false, y: false };

interface Own {
  readonly one: PlacedBearing;
  readonly index: number;
}

function farthest(own: readonly Own[], first: Own): Own | undefined {
  const square = ({ one }: Own): number => {
    const [dx, dy] = [one.xMm - first.one.xMm, one.yMm - first.one.yMm];
    return dx * dx + dy * dy;
  };
  // along the container rather than over the diagonal: equal in arm, and the hold then acts squarely across
  const others = own.filter((candidate) => candidate !== first && square(candidate) > 0);
  const lever = ({ one }: Own): number =>
    Math.max(Math.abs(one.xMm - first.one.xMm), Math.abs(one.yMm - first.one.yMm));
  return others.toSorted((a, b) => Math.round(lever(b) - lever(a)) || square(a) - square(b))[0];
}

function acrossFrom(first: PlacedBearing, far: PlacedBearing): PlanHold {
  const alongX = Math.abs(far.xMm - first.xMm) >= Math.abs(far.yMm - first.yMm);
  return { x: !alongX, y: alongX };
}
