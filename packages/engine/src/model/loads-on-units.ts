import type { ActionCase, ActionLoad } from "../loads/action-case.ts";
import { LastMade } from "../numerics/last-made.ts";
import { RecentlyMade } from "../numerics/recently-made.ts";
import { postAt, type BearingPlan, type PlannedBearing } from "./bearing-plan.ts";
import type { UnitSeat } from "./unit-lines.ts";
import type { UnitPoint } from "./unit-point.ts";

/** A load on one container as the model takes it. */
export type UnitLoad = ActionLoad | StubMovement;

/** The far end of a seat's stub is built or goes down by so much against its rail, mm, up negative. */
export type StubMovement = { readonly kind: "stub"; readonly seat: UnitSeat; readonly downMm: number };

type Plan = Pick<BearingPlan, "bearings" | "inWalls">;
type SeatPoint = Extract<UnitPoint, { readonly seat: UnitSeat }>;

/**
 * Loads by the container they act on. A post in a wall is part of its container, and so is what acts on it; a seat, or a post
 * that stands on a container, moves the stub between its rail and what bears there.
 */
export function loadsOnUnits(
  { loads }: Pick<ActionCase, "loads">,
  plan: Plan,
): ReadonlyMap<string, readonly UnitLoad[]> {
  const postsInWalls = [...plan.inWalls].flatMap(([unitId, posts]) =>
    posts.map(({ postId }) => [postId, unitId] as const),
  );
  const make = () => knownLists(loadsByUnit(loads, new Map(postsInWalls), plan));
  // supports move what bears on them
  return loads.some(({ kind }) => kind === "movement")
    ? make()
    : last.take(loads, [JSON.stringify(postsInWalls)], make);
}

/** An edit leaves most actions as they are. */
const last = new LastMade<ReadonlyMap<string, readonly UnitLoad[]>>();

/** And of those that are others most are the same on most containers: one list for all that say the same. */
const knownLists = (byUnit: ReadonlyMap<string, readonly UnitLoad[]>): ReadonlyMap<string, readonly UnitLoad[]> =>
  new Map([...byUnit].map(([unitId, list]) => [unitId, lists.take(JSON.stringify(list), () => list)]));

const lists = new RecentlyMade<readonly UnitLoad[]>(1024);

function loadsByUnit(
  loads: ActionCase["loads"],
  unitOfPost: ReadonlyMap<string, string>,
  plan: Plan,
): Map<string, UnitLoad[]> {
  const found = new Map<string, UnitLoad[]>();
  const add = (unitId: string, load: UnitLoad): void => {
    const list = found.get(unitId);
    if (list === undefined) found.set(unitId, [load]);
    else list.push(load);
  };
  for (const load of loads) {
    if (load.kind === "movement") {
      for (const moved of movedStubs(load.elementId, load.downMm, plan)) add(moved.unitId, moved.load);
      continue;
    }
    const element = "containerId" in load ? load.containerId : load.elementId;
    add(unitOfPost.get(element) ?? element, load);
  }
  return found;
}

/** Seats and posts whose level error the model knows: those with a stub of their own. */
export const hasStub = (elementId: string, plan: Plan): boolean => movedStubs(elementId, 1, plan).length > 0;

/** Going down takes the underside of an upper rail nearer to its rail, and the top of a lower one too. */
function movedStubs(elementId: string, downMm: number, plan: Plan): { unitId: string; load: StubMovement }[] {
  return plan.bearings.flatMap((bearing) => {
    if (bearing.seatId !== elementId && postOn(bearing, plan) !== elementId) return [];
    const point = seatPoint(bearing);
    return point === undefined ? [] : [{ unitId: point.unitId, load: { kind: "stub", seat: point.seat, downMm } }];
  });
}

/** A post on the ground moves with it. */
function postOn({ above, below }: PlannedBearing, { inWalls }: Plan): string | undefined {
  return "ground" in below ? undefined : postAt(above, inWalls);
}

function seatPoint({ above, below }: PlannedBearing): SeatPoint | undefined {
  if ("seat" in above) return above;
  return "point" in below && "seat" in below.point ? below.point : undefined;
}
