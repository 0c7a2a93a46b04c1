import type { Analysis } from "../load-path/analysis.ts";
import type { PlacedBeam } from "../geometry/placed-beam.ts";

/** A beam turned less against the site's axes lies along one of them, sine. */
const ALONG_AXIS = 1e-3;
/** Held up at so many places it stands. */
const LEAST_SUPPORTS = 2;

/**
 * Added beams the model has: those that something stands on, level and along an axis of the site, held up at two places or
 * more. What stands on another stands as on the ground.
 */
export function modelledBeams({ structure, bearings, footings, beamSupports }: Analysis): ReadonlySet<string> {
  const bearsUp = new Set([
    ...bearings.flatMap(({ contacts }) =>
      contacts.flatMap(({ target }) => (target.on === "beam" ? [target.elementId] : [])),
    ),
    ...[...footings.values()].flatMap((footing) => (footing.on === "beam" ? [footing.elementId] : [])),
  ]);
  const found = new Set<string>();
  // a beam under a beam that bears something bears it too
  for (let known = -1; known !== found.size;) {
    known = found.size;
    for (const beam of structure.building.beams) {
      const supports = beamSupports.get(beam.id) ?? [];
      if (!bearsUp.has(beam.id) || supports.length < LEAST_SUPPORTS || !isPlain(beam)) continue;
      found.add(beam.id);
      for (const { target } of supports) if (target.on === "beam") bearsUp.add(target.elementId);
    }
  }
  return found;
}

const isPlain = ({ from, to, outline: { ux, uy } }: PlacedBeam): boolean =>
  from.zMm === to.zMm && Math.min(Math.abs(ux), Math.abs(uy)) < ALONG_AXIS;
