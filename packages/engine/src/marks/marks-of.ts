import type { Mark } from "@cornerway/schema";
import type { Analysis } from "../load-path/analysis.ts";
import { bearingMarks } from "./bearing-marks.ts";
import { borneMarks } from "./borne-marks.ts";
import { collisionMarks } from "./collision-marks.ts";
import { fabricMarks } from "./fabric-marks.ts";
import { loadOverOpeningMarks } from "./load-over-opening-marks.ts";
import { padMarks } from "./pad-marks.ts";
import { postMarks } from "./post-marks.ts";
import { standMarks } from "./stand-marks.ts";
import { standingOf } from "./standing.ts";
import { verdictRank } from "./verdicts-of.ts";

/** Every mark of a scheme, worst verdict first, then by id; one for each cause. */
export function marksOf(analysis: Analysis): Mark[] {
  const { building } = analysis.structure;
  const standing = standingOf(analysis);
  const causes = [
    ...collisionMarks(analysis.collisions),
    ...building.units.flatMap((unit) => fabricMarks(analysis.structure, unit)),
    ...building.units.flatMap((unit) => {
      const run = standing.run(unit.id);
      return run === undefined
        ? []
        : [...standMarks(analysis, standing, unit, run), ...bearingMarks(analysis, unit, run)];
    }),
    ...loadOverOpeningMarks(analysis),
    ...building.posts.flatMap((post) => postMarks(analysis, post)),
    ...padMarks(analysis),
  ];
  const named = new Set(causes.flatMap(({ elements }) => elements));
  const quiet = building.units.filter(({ id }) => !named.has(id)).flatMap((unit) => borneMarks(standing, unit));
  return [...causes, ...quiet].toSorted(worstFirst);
}

const worstFirst = (a: Mark, b: Mark): number =>
  verdictRank[b.verdict] - verdictRank[a.verdict] || (a.id < b.id ? -1 : 1);
