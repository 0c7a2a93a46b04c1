import type { FittingName } from "@cornerway/schema";
import type { Contact } from "../bearing/contact.ts";
import type { Fabric } from "../fabric/fabric-of.ts";
import type { Unit } from "../geometry/building.ts";
import { balanceMm } from "../geometry/tolerances.ts";
import { outsideHull } from "./outside-hull.ts";
import { resultantOf, type PointForce } from "./resultant.ts";
import { shareBySprings, type SpringPlace } from "./share-by-springs.ts";

/** How a unit stands under all that comes down on it. */
export type Stand =
  /** The resultant lies this far inside the outline of its bearings; `edge` is the nearest place on it. */
  | {
      readonly state: "stands";
      readonly insideMm: number;
      readonly edge: { readonly xMm: number; readonly yMm: number };
    }
  /**
   * The resultant lies this far outside the bearings, or on their very edge (0): all of it comes on the nearest of them
   * as it begins to turn.
   */
  | {
      readonly state: "tips";
      readonly outsideMm: number;
      readonly pivot: { readonly xMm: number; readonly yMm: number };
    }
  /** On one point or one line: free to turn about it. */
  | { readonly state: "turns" }
  | { readonly state: "falls" }
  /** Pulled up by more than it weighs with all it carries, and not held. */
  | { readonly state: "lifts" };

export type UnitStatics = {
  /** Force at each contact, kN, in the order given; compression positive, a pull only where it is held down. */
  readonly forcesKn: readonly number[];
  readonly stand: Stand;
  /** Weight, imposed load and all from above, kN, and where it acts in the unit's own plan, mm. */
  readonly resultant: PointForce;
};

/**
 * A rigid unit on its bearings. What comes down over a corner whose own bottom fitting bears goes straight down that
 * post; all else (its own weight, loads with nothing under their post) is shared by the whole unit. Statics only: the
 * true split depends on stiffness not known here.
 */
export function unitStatics(
  unit: Unit,
  fabric: Fabric,
  contacts: readonly Contact[],
  own: readonly PointForce[],
  corners: ReadonlyMap<FittingName, number>,
  loose: readonly PointForce[],
): UnitStatics {
  const direct = contacts.map(({ fitting }) =>
    fitting !== undefined && isWhole(fabric, fitting) ? (corners.get(fitting) ?? 0) : 0,
  );
  const carried = new Set(
    contacts.flatMap(({ fitting }) => (fitting !== undefined && isWhole(fabric, fitting) ? [fitting] : [])),
  );
  const shared = resultantOf([
    ...own,
    ...loose,
    ...cornerForces(unit, corners).filter(({ name }) => !carried.has(name)),
  ]);
  const resultant = resultantOf([...own, ...loose, ...cornerForces(unit, corners)]);
  if (contacts.length === 0) return { forcesKn: [], stand: { state: "falls" }, resultant };
  const places = contacts.map(({ localXMm, localYMm, heldById }, at) => ({
    xMm: localXMm,
    yMm: localYMm,
    directKn: direct[at] ?? 0,
    held: heldById !== undefined,
  }));
  if (resultant.forceKn <= 0) return pulledUp(places, shared, resultant);
  const stand = standOf(places, resultant);
  if (stand.state === "tips") return { forcesKn: onPivot(places, resultant, stand.pivot), stand, resultant };
  const shares = shareBySprings(places, shared);
  return { forcesKn: shares.map((share, at) => share + (direct[at] ?? 0)), stand, resultant };
}

/** A unit pulled up by more than it weighs stands only where those of its bearings that are held balance that. */
function pulledUp(places: readonly SpringPlace[], shared: PointForce, resultant: PointForce): UnitStatics {
  const shares = shareBySprings(places, shared);
  const given = resultantOf(places.map(({ xMm, yMm }, at) => ({ forceKn: shares[at] ?? 0, xMm, yMm })));
  const offKn = Math.abs(given.forceKn - shared.forceKn);
  const offKnm =
    (Math.abs(given.xMm - shared.xMm) + Math.abs(given.yMm - shared.yMm)) * Math.abs(shared.forceKn) * 0.001;
  if (offKn + offKnm > leastKn) return { forcesKn: places.map(() => 0), stand: { state: "lifts" }, resultant };
  const forcesKn = shares.map((share, at) => share + (places[at]?.directKn ?? 0));
  return { forcesKn, stand: { state: "stands", insideMm: Infinity, edge: resultant }, resultant };
}

/** Less than this is rounding, kN and kN m. */
const leastKn = 1e-3;

/** How a resultant stands to bearings, of which some are held down and pull. */
export function standOf(places: readonly HeldPlace[], resultant: PointForce): Stand {
  const { outsideMm, insideMm, edge, spansArea } = outsideHull(withPulls(places), resultant);
  const isOutside = outsideMm > balanceMm;
  if (isOutside || (spansArea && insideMm <= balanceMm))
    return { state: "tips", outsideMm: isOutside ? outsideMm : 0, pivot: outsideHull(places, resultant).nearest };
  return spansArea ? { state: "stands", insideMm, edge } : { state: "turns" };
}

type HeldPlace = { readonly xMm: number; readonly yMm: number; readonly held?: boolean };

/**
 * A bearing that pulls lets the resultant come down beyond every other one, on the line from it through that one: the
 * bearings are widened by a place far out on each such line. Up to a pull of so many times all the load.
 */
function withPulls(places: readonly HeldPlace[]): readonly HeldPlace[] {
  const pulling = places.filter(({ held }) => held);
  if (pulling.length === 0) return places;
  const far = pulling.flatMap((from) =>
    places
      .filter((to) => to !== from)
      .map((to) => ({ xMm: to.xMm + mostPull * (to.xMm - from.xMm), yMm: to.yMm + mostPull * (to.yMm - from.yMm) })),
  );
  return [...places, ...far];
}

const mostPull = 100;

const onPivot = (
  places: readonly { xMm: number; yMm: number }[],
  { forceKn }: PointForce,
  pivot: { xMm: number; yMm: number },
): number[] =>
  shareBySprings(
    places.map(({ xMm, yMm }) => ({ xMm, yMm, directKn: 0, held: false })),
    { forceKn, ...pivot },
  );

const cornerForces = (unit: Unit, corners: ReadonlyMap<FittingName, number>) =>
  unit.topFittings.map(({ name, localXMm, localYMm }) => ({
    name,
    forceKn: corners.get(name) ?? 0,
    xMm: localXMm,
    yMm: localYMm,
  }));

function isWhole({ postsWhole }: Fabric, fitting: FittingName): boolean {
  switch (fitting) {
    case "front-right":
    case "front-left":
    case "door-right":
    case "door-left":
      return postsWhole[fitting];
    default:
      return true;
  }
}
