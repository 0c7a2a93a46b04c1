import { onBeam } from "../geometry/placed-beam.ts";
import type { PlannedBearing } from "./bearing-plan.ts";
import { linkOf, nameAbove, type BearingPlaces } from "./model-bearings.ts";
import type { ModelAssumptions } from "./model-assumptions.ts";
import type { HoldCandidate } from "./plan-holds.ts";

/** Every bearing that may hold in plan, once (two posts on one pad, or a seat found twice, share a support). */
export function holdCandidates(
  bearings: readonly PlannedBearing[],
  places: BearingPlaces,
  assumptions: ModelAssumptions,
): HoldCandidate[] {
  const found = new Map<string, HoldCandidate>();
  const locked = lockedUnits(bearings);
  const stands = standingBeams(bearings);
  const made = new Set(places.building.locks.filter(({ kind }) => kind === "made connection").map(({ id }) => id));
  // what stands on something that is pinned at both ends, or carried by such, goes with what it bears, whatever else holds that
  const goesAlong = ({ above, below }: PlannedBearing): boolean =>
    "post" in above ||
    "post" in below ||
    ("beam" in above && !stands.has(above.beam)) ||
    ("beam" in below && !stands.has(below.beam));
  bearings.forEach((planned, n) => {
    const { above, heldById } = planned;
    const along = goesAlong(planned);
    if ("unitId" in above && locked.has(above.unitId) && heldById === undefined && !along) return;
    const [link] = linkOf(planned, n, places, assumptions);
    const bearing = link?.id ?? nameAbove(above, places);
    const [xMm, yMm] = placeOf(above, places);
    const of = along ? null : "unitId" in above ? above.unitId : "beam" in above ? above.beam : null;
    // holes of bolts are wider than the bolts: a beam that bends does not push its bearings apart
    const atPlay = "beam" in above && of !== null ? ({ atPlay: true } as const) : {};
    const welded = isWelded(planned, made) ? ({ welded: true } as const) : {};
    const plain = "unitId" in above && heldById === undefined ? ({ plain: true } as const) : {};
    const held = { bearing, of, onCorner: "corner" in above, xMm, yMm };
    if (!found.has(bearing)) found.set(bearing, { ...held, ...atPlay, ...welded, ...plain });
  });
  return [...found.values()];
}

/** A seat that holds down or a made connection, both welds of a stated detail. On the ground a pad may give way: not counted. */
const isWelded = ({ above, below, heldById, seatId }: PlannedBearing, made: ReadonlySet<string>): boolean =>
  "unitId" in above && !("ground" in below) && heldById !== undefined && (heldById === seatId || made.has(heldById));

/** Beams with two supports or more that are no pinned posts, nor beams on such: they keep their own place in plan. */
function standingBeams(bearings: readonly PlannedBearing[]): ReadonlySet<string> {
  const found = new Set<string>();
  const beams = new Set(bearings.flatMap(({ above }) => ("beam" in above ? [above.beam] : [])));
  for (let known = -1; known !== found.size;) {
    known = found.size;
    for (const beam of beams) {
      const firm = bearings.filter(
        ({ above, below }) =>
          "beam" in above && above.beam === beam && !("post" in below) && (!("beam" in below) || found.has(below.beam)),
      );
      if (firm.length >= 2) found.add(beam);
    }
  }
  return found;
}

/** Units with two bearings or more that hold in plan: these alone do it, the others only bear. */
function lockedUnits(bearings: readonly PlannedBearing[]): Set<string> {
  const count = new Map<string, number>();
  for (const { above, below, heldById } of bearings)
    if ("unitId" in above && heldById !== undefined && !("post" in below))
      count.set(above.unitId, (count.get(above.unitId) ?? 0) + 1);
  return new Set([...count].flatMap(([id, held]) => (held >= 2 ? [id] : [])));
}

function placeOf(above: PlannedBearing["above"], { unit, building }: BearingPlaces): readonly [number, number] {
  if ("unitId" in above) {
    const [x, y] = unit(above.unitId).at(above);
    return [x, y];
  }
  const placed = "post" in above ? building.postById.get(above.post) : onBeamOf(above, building);
  return [placed?.xMm ?? NaN, placed?.yMm ?? NaN];
}

function onBeamOf(
  { beam: id, uMm }: Extract<PlannedBearing["above"], { readonly beam: string }>,
  { beamById }: BearingPlaces["building"],
) {
  const beam = beamById.get(id);
  return beam === undefined ? undefined : onBeam(beam, uMm);
}
