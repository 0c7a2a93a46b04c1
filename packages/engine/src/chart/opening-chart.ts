import type { Opening, Scheme } from "@cornerway/schema";
import { buildingOf } from "../geometry/building.ts";
import { openingFrame } from "../catalog/sections/frame-tubes.ts";
import type { StrengthMemory } from "../strength/solve-runs.ts";
import type { StrengthBasis } from "../strength/strength-basis.ts";
import {
  STEP_MM,
  type ChartAnswer,
  type ChartBasis,
  type ChartColumn,
  type ChartException,
  type ChartRefusal,
  type ChartRequest,
  type ChartStep,
  type OpeningChart,
} from "./chart.ts";
import { chartPlaces } from "./chart-places.ts";
import { chartSide, forbids, type Place } from "./chart-side.ts";
import { decidingSets } from "./deciding-sets.ts";
import { distances } from "./distances.ts";
import { PlaceJudge } from "./judge-place.ts";
import { tracedColumn } from "./trace-column.ts";
import { without } from "./trial-opening.ts";
import { verdictRank } from "../marks/verdicts-of.ts";
import { trialGround, type TrialGround, type TrialSet } from "./trial-ground.ts";

/** How closely a chart is traced. */
export type ChartFineness = {
  /** Columns this far apart, mm. */
  readonly apartMm: number;
  /** Under how much of the envelope: the sets that decide with the opening in its first place, or all. */
  readonly envelope: "deciding sets" | "all sets";
};

export type ChartAnswerOf = { readonly accepted: true; readonly chart: OpeningChart } | ChartRefusal;

/**
 * The chart of one side, a column at a time: the building solved whole once, then every place and width on the runs that govern,
 * the container alone condensed anew. Stop asking and it stops.
 */
export function* tracedChart(
  scheme: Scheme,
  request: ChartRequest,
  fineness: ChartFineness,
  basis: StrengthBasis,
  memory: StrengthMemory,
): Generator<ChartStep, ChartAnswerOf> {
  const drawn = scheme.openings.find(({ id }) => id === request.openingId);
  const first = drawn === undefined ? firstPlace(scheme, request) : placeOf(drawn);
  const answer = trialGround(scheme, request, first, basis, memory);
  if (!answer.accepted) return answer;
  const { ground } = answer;
  const judge = new PlaceJudge(ground);
  const side = chartSide(ground.unit, request, ground.ownBearings, ground.whole.solved);
  const places = chartPlaces(side.lengthMm, side.sheet.u0, side.sheet.u1, fineness.apartMm);
  yield { kind: "side", side, of: places.length };
  const sets = fineness.envelope === "deciding sets" ? decidingSets(ground) : ground.sets;
  const columns: ChartColumn[] = [];
  const columnAt = (centreMm: number): ChartColumn =>
    tracedColumn(
      centreMm,
      side.lengthMm,
      (widthMm) => judge.answer({ centreMm, widthMm }, sets),
      (widthMm) => judge.forbidden({ centreMm, widthMm }),
      nearest(columns, centreMm),
    );
  for (const centreMm of places) {
    const column = columnAt(centreMm);
    columns.push(column);
    yield { kind: "column", column, done: columns.length, of: places.length };
  }
  const sorted = columns.toSorted((a, b) => a.centreMm - b.centreMm);
  const away =
    drawn && distances(first, columnAt(first.centreMm), side.lengthMm, sorted, (place) => judge.answer(place, sets));
  return {
    accepted: true,
    chart: {
      request,
      side,
      basis: basisOf(ground, sets),
      without: judge.verdictWithout(sets),
      columns: sorted,
      exceptions: sorted.flatMap(exceptionsIn),
      ...(away && { distances: away }),
      solved: judge.solved,
    },
  };
}

/** One place and width as a chart answers it, the building solved with the opening in its first place. */
export function chartedPlace(
  scheme: Scheme,
  request: ChartRequest,
  place: Place,
  basis: StrengthBasis,
  memory: StrengthMemory,
): ChartAnswer | ChartRefusal {
  const answer = trialGround(scheme, request, firstPlace(scheme, request), basis, memory);
  if (!answer.accepted) return answer;
  return new PlaceJudge(answer.ground).answer(place, decidingSets(answer.ground));
}

const nearest = (columns: readonly ChartColumn[], centreMm: number): ChartColumn | undefined =>
  columns.toSorted((a, b) => Math.abs(a.centreMm - centreMm) - Math.abs(b.centreMm - centreMm))[0];

const placeOf = ({ offsetUm, widthUm }: Opening): Place => ({
  centreMm: (offsetUm + widthUm / 2) / 1000,
  widthMm: widthUm / 1000,
});

/** An ordinary door, to find the runs that govern, at the free place nearest the middle; the middle where none is free. */
function firstPlace(scheme: Scheme, request: ChartRequest): Place {
  const unit = buildingOf(without(scheme, request)).unitById.get(request.containerId);
  if (unit === undefined) throw new RangeError(`no container ${request.containerId} in this scheme`);
  const { u1 } = unit.dimensions.face(request.face);
  const places = chartPlaces(u1, 0, u1, STEP_MM).map((centreMm): Place => ({ centreMm, widthMm: ORDINARY_MM }));
  const free = places
    .toSorted((a, b) => Math.abs(a.centreMm - u1 / 2) - Math.abs(b.centreMm - u1 / 2))
    .find((place) => forbids(unit, request, unit.openings, place) === undefined);
  return free ?? { centreMm: u1 / 2, widthMm: ORDINARY_MM };
}

const ORDINARY_MM = 900;

function basisOf({ under, request }: TrialGround, sets: readonly TrialSet[]): ChartBasis {
  const { jamb, header, sill } = openingFrame(request);
  return {
    under,
    vectors: sets.map(({ set, groups }) => ({
      assumptions: set.id,
      runs: groups.flatMap(({ runs }) => runs.map(({ id }) => id)),
    })),
    framing: request.framed ? [`jambs ${jamb.name}`, `header ${header.name}`, `sill ${sill.name}`] : [],
    assumed: chartAssumed,
  };
}

/** What a chart takes for granted beside what strength does; printed with it. */
const chartAssumed = [
  "solved under the runs that govern the unit and its bearings with the opening in its first place; an answer is confirmed under all runs when it is asked for",
  "loads are those of the building with the opening in its first place, but for the weight of the frame: enclosure and internal pressure of wind do not follow the width, nor the building's lean unless all sets are solved",
  "the verdict is what the opening adds: parts, holds and runs that are worse by more than 2 %, new, or no longer within their strength; parts of other units than at the unit's bearings, pressures on single parts and storeys without a counted wall only when confirmed",
  "each column is asked at a few widths and closed in on where neighbours differ: an island between two widths that agree is not found; how far an opening may move is read from the columns where they agree and closed in on where they do not",
  "places and widths in steps of 50 mm; nothing is smoothed",
] as const;

/** Wider openings that fare better than the narrower ones before them. */
function exceptionsIn({ centreMm, stretches }: ChartColumn): ChartException[] {
  return stretches.flatMap((wider, n) => {
    const narrower = stretches[n - 1];
    return narrower !== undefined && verdictRank[wider.verdict] < verdictRank[narrower.verdict]
      ? [{ centreMm, narrower, wider }]
      : [];
  });
}
