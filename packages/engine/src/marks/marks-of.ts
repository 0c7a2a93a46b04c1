import type { Mark, MarkKind } from "@cornerway/schema";
import { padCollisionsOf } from "../bearing/pad-collisions.ts";
import type { Analysis } from "../load-path/analysis.ts";
import { bearingMarks } from "./bearing-marks.ts";
import { borneMarks } from "./borne-marks.ts";
import { collisionMarks, padCollisionMarks } from "./collision-marks.ts";
import { fabricMarks } from "./fabric-marks.ts";
import { loadOverOpeningMarks } from "./load-over-opening-marks.ts";
import { seatingMarks } from "./seating-marks.ts";
import { padMarks } from "./pad-marks.ts";
import { postMarks } from "./post-marks.ts";
import { standMarks } from "./stand-marks.ts";
import { standingOf } from "./standing.ts";
import { verdictRank } from "./verdicts-of.ts";

/** Every mark of a scheme, worst verdict first, then by what decides, then by id; one for each cause. */
export function marksOf(analysis: Analysis): Mark[] {
  const { building } = analysis.structure;
  const standing = standingOf(analysis);
  const causes = [
    ...collisionMarks(analysis.collisions),
    ...padCollisionMarks(padCollisionsOf(building)),
    ...building.units.flatMap((unit) => fabricMarks(analysis.structure, unit)),
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
    ...building.posts.flatMap((post) => postMarks(analysis, post)),
    ...padMarks(analysis),
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
  "opening-off-face": 6,
  "openings-overlap": 7,
  "post-through-unit": 8,
  overhang: 9,
  "borne-on-rail": 10,
  "corner-on-air": 11,
  "made-connection": 12,
  rocks: 13,
  "stands-clear": 14,
  "off-its-pad": 15,
  "wall-out": 16,
  "post-carries": 17,
  "cross-members-cut": 18,
  "opening-in-sheet": 19,
  "post-through-opening": 20,
  "post-holds-nothing": 21,
  "pad-missing": 22,
  "pad-holds-nothing": 23,
  "below-not-settled": 24,
  "borne-on-fittings": 25,
};

const worstFirst = (a: Mark, b: Mark): number =>
  verdictRank[b.verdict] - verdictRank[a.verdict] || order[a.fact.kind] - order[b.fact.kind] || (a.id < b.id ? -1 : 1);
