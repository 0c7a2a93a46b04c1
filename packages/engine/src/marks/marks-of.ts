import type { Mark, MarkKind } from "@cornerway/schema";
import { padCollisionsOf } from "../bearing/pad-collisions.ts";
import { solidsInPads } from "../bearing/solids-in-pads.ts";
import type { Analysis } from "../load-path/analysis.ts";
import { bearingMarks } from "./bearing-marks.ts";
import { borneMarks } from "./borne-marks.ts";
import { collisionMarks, padCollisionMarks, solidInPadMarks } from "./collision-marks.ts";
import { fabricMarks } from "./fabric-marks.ts";
import { hatchMarks } from "./hatch-marks.ts";
import { loadOverOpeningMarks } from "./load-over-opening-marks.ts";
import { seatingMarks } from "./seating-marks.ts";
import { padMarks } from "./pad-marks.ts";
import { postCentreMarks } from "./post-centre-marks.ts";
import { postMarks } from "./post-marks.ts";
import { standMarks } from "./stand-marks.ts";
import { standingOf } from "./standing.ts";
import { verdictRank } from "./verdicts-of.ts";

/** Every mark of a scheme, worst verdict first, then by what decides, then by id; one for each cause. */
export function marksOf(analysis: Analysis): Mark[] {
  const { building } = analysis.structure;
  const standing = standingOf(analysis);
  const sunk = solidsInPads(building);
  const sunkIds = new Set(sunk.map(({ solid }) => solid.id));
  const causes = [
    ...collisionMarks(analysis.collisions),
    ...padCollisionMarks(padCollisionsOf(building)),
    ...solidInPadMarks(sunk),
    ...building.units.flatMap((unit) => fabricMarks(analysis.structure, unit)),
    ...building.units.flatMap((unit) => hatchMarks(building, unit)),
    ...building.units.flatMap((unit) => {
      const run = standing.run(unit.id);
      return run === undefined
        ? []
        : [
            ...standMarks(analysis, standing, unit, run),
            ...bearingMarks(analysis, unit, run),
            ...seatingMarks(analysis, unit, run),
          ];
    }),
    ...loadOverOpeningMarks(analysis),
    ...building.posts.flatMap((post) => [
      ...postMarks(analysis, post, sunkIds.has(post.id)),
      ...postCentreMarks(analysis, post),
    ]),
    ...padMarks(analysis, standing),
  ];
  const named = new Set(causes.flatMap(({ elements }) => elements));
  const quiet = building.units.filter(({ id }) => !named.has(id)).flatMap((unit) => borneMarks(standing, unit));
  return [...causes, ...quiet].toSorted(worstFirst);
}

/** What decides first: bodies, then the way down, then members, sheets and pads, then what is quiet. */
const order: Record<MarkKind, number> = {
  collision: 0,
  "tips-over": 1,
  mechanism: 2,
  "member-cut": 3,
  "load-over-opening": 4,
  "post-without-ground": 5,
  "pad-off-ground": 6,
  "opening-off-face": 7,
  "openings-overlap": 8,
  "post-through-unit": 9,
  "near-tipping": 10,
  overhang: 11,
  "borne-on-rail": 12,
  "corner-on-air": 13,
  "made-connection": 14,
  rocks: 15,
  "stands-clear": 16,
  "off-its-pad": 17,
  "wall-out": 18,
  "post-carries": 19,
  "post-off-centre": 20,
  "cross-members-cut": 21,
  "hatch-blocked": 22,
  "opening-in-sheet": 23,
  "post-through-opening": 24,
  "post-holds-nothing": 25,
  "below-ground": 26,
  "pad-missing": 27,
  "pad-holds-nothing": 28,
  "below-not-settled": 29,
  "borne-on-fittings": 30,
};

const worstFirst = (a: Mark, b: Mark): number =>
  verdictRank[b.verdict] - verdictRank[a.verdict] || order[a.fact.kind] - order[b.fact.kind] || (a.id < b.id ? -1 : 1);
