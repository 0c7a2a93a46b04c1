import type { Mark } from "@cornerway/schema";
import type { Unit } from "../geometry/building.ts";
import { rounded } from "../units.ts";
import { markOf } from "./mark-of.ts";
import type { Standing } from "./standing.ts";

/**
 * For a unit nothing else has been said of: it works as built when it is uncut and borne on its corners all the way
 * down; when only what it stands on is not settled, that is said.
 */
export function borneMarks(standing: Standing, unit: Unit): Mark[] {
  const run = standing.run(unit.id);
  if (run === undefined || unit.openings.length > 0 || !standing.onCorners(unit.id)) return [];
  const forces = run.forcesKn.length === 0 ? [0] : run.forcesKn;
  const heaviestPostKn = rounded(Math.max(...forces));
  const at = run.contacts[run.forcesKn.indexOf(Math.max(...forces))]?.at;
  if (at === undefined) return [];
  if (!standing.onCornersToGround(unit.id)) return [belowMark(standing, unit, at)];
  return [
    markOf({
      fact: { kind: "borne-on-fittings", heaviestPostKn },
      verdict: "works as built",
      certainty: "common practice",
      elements: [unit.id],
      at,
      basis:
        "Load path only, no strength checked: uncut, fitting on fitting or on pads, apertures parallel, hole centres within the play of a stock lock. Force by statics, unfactored, ± not known.",
    }),
  ];
}

function belowMark(standing: Standing, unit: Unit, at: Mark["at"]): Mark {
  const below = standing
    .run(unit.id)
    ?.contacts.flatMap(({ target }) => (target.on === "fitting" ? [target.elementId] : []));
  return markOf({
    fact: { kind: "below-not-settled" },
    verdict: "not checked",
    certainty: "derived",
    elements: [unit.id, ...(below ?? []).toSorted()],
    named: 1,
    at,
    basis: "Uncut and corner on corner, but a unit below does not lead the load down whole posts to the ground.",
  });
}
