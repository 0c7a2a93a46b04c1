import type { Mark, MarkKind } from "@cornerway/schema";
import { beamCollisionsOf } from "../bearing/beam-collisions.ts";
import { padCollisionsOf } from "../bearing/pad-collisions.ts";
import { solidsInPads } from "../bearing/solids-in-pads.ts";
import type { Analysis } from "../load-path/analysis.ts";
import { beamMarks } from "./beam-marks.ts";
import { bearingMarks } from "./bearing-marks.ts";
import { borneMarks } from "./borne-marks.ts";
import { beamCollisionMarks, collisionMarks, padCollisionMarks, solidInPadMarks } from "./collision-marks.ts";
import { fabricMarks } from "./fabric-marks.ts";
import { givenMarks } from "./given-marks.ts";
import { hatchMarks } from "./hatch-marks.ts";
import { loadOverOpeningMarks } from "./load-over-opening-marks.ts";
import { lockMarks } from "./lock-marks.ts";
import { seatMarks } from "./seat-marks.ts";
import { seatingMarks } from "./seating-marks.ts";
import { padMarks } from "./pad-marks.ts";
import { postCentreMarks } from "./post-centre-marks.ts";
import { postMarks } from "./post-marks.ts";
import { standMarks } from "./stand-marks.ts";
import { standingOf } from "./standing.ts";
import { tieMarks } from "./tie-marks.ts";
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
    ...beamCollisionMarks(beamCollisionsOf(building)),
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
    ...building.beams.flatMap((beam) => beamMarks(analysis, beam)),
    ...analysis.seats.flatMap((seat) => seatMarks(analysis, seat)),
    ...lockMarks(building, analysis.locks),
    ...tieMarks(building),
    ...givenMarks(building),
  ];
  const named = new Set(causes.flatMap(({ elements }) => elements));
  const quiet = building.units.filter(({ id }) => !named.has(id)).flatMap((unit) => borneMarks(standing, unit));
  return [...causes, ...quiet].toSorted(worstFirst);
}

/** What decides first: bodies, then the way down, then members, sheets and pads, what is quiet, then what strength says. */
const order: Record<MarkKind, number> = {
  collision: 0,
  "tips-over": 1,
  mechanism: 2,
  "beam-lifts": 3,
  "member-cut": 4,
  "load-over-opening": 5,
  "post-without-ground": 6,
  "beam-end-without-support": 7,
  "seat-without-bearing": 8,
  "pad-off-ground": 9,
  "opening-off-face": 10,
  "openings-overlap": 11,
  "post-through-unit": 12,
  "beam-through-unit": 13,
  "lock-cannot-serve": 14,
  "tie-cannot-serve": 15,
  "load-off-unit": 16,
  "near-tipping": 17,
  overhang: 18,
  "borne-on-rail": 19,
  "borne-on-beam": 20,
  "corner-on-air": 21,
  "made-connection": 22,
  rocks: 23,
  "stands-clear": 24,
  "seat-packing": 25,
  "seat-off-rail": 26,
  "off-its-pad": 27,
  "wall-out": 28,
  "beam-carries": 29,
  "post-carries": 30,
  "post-off-centre": 31,
  "cross-members-cut": 32,
  "hatch-blocked": 33,
  "opening-in-sheet": 34,
  "post-through-opening": 35,
  "tie-joins": 36,
  "section-unknown": 37,
  "override-misfits": 38,
  "beam-holds-nothing": 39,
  "post-holds-nothing": 40,
  "below-ground": 41,
  "pad-missing": 42,
  "pad-holds-nothing": 43,
  "below-not-settled": 44,
  "borne-on-fittings": 45,
  uplift: 46,
  slides: 47,
  "no-lateral-wall": 48,
  overstressed: 49,
  "strength-open": 50,
  "strength-adequate": 51,
};

export const worstFirst = (a: Mark, b: Mark): number =>
  verdictRank[b.verdict] - verdictRank[a.verdict] || order[a.fact.kind] - order[b.fact.kind] || (a.id < b.id ? -1 : 1);
