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
import { distances, toldPlaces } from "./distances.ts";
import { PlaceJudge } from "./judge-place.ts";
import { isPlain, TracedColumns } from "./traced-columns.ts";
import { without } from "./trial-opening.ts";
import { verdictRank } from "../marks/verdicts-of.ts";
import { trialGround, type TrialGround, type TrialSet } from "./trial-ground.ts";

/** How closely a chart is traced. */
export type ChartFineness = {
  /** Columns this far apart, mm. */
  readonly apartMm: number;
  /** Under how much of the envelope: the sets that decide where the opening was looked at under all, or all everywhere. */
  readonly envelope: "deciding sets" | "all sets";
};

export type ChartAnswerOf = { readonly accepted: true; readonly chart: OpeningChart } | ChartRefusal;

/**
 * The chart of one side, a column at a time, the nearest to the opening first: the building solved whole once, the boundaries of one
 * column found under every vector that governs, then every place and width under those that decided there, the container alone
 * condensed anew. What people are told
 * of a region or of the opening as drawn is confirmed under every vector; where it is not, what decides there joins and the
 * columns are traced anew. Stop asking and it stops.
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
  const side = chartSide(ground.unit, request, ground.ownBearings, ground.whole.solved);
  const judge = new PlaceJudge(ground, fineness.envelope, isPlain(side));
  const places = chartPlaces(side.lengthMm, side.sheet.u0, side.sheet.u1, fineness.apartMm, first.centreMm);
  yield { kind: "side", side, of: places.length };
  const columns = new TracedColumns(judge, side);
  judge.confirmed(first);
  let done = 0;
  for (const centreMm of places) {
    const column = done === 0 ? columns.traceSurely(centreMm) : columns.trace(centreMm);
    yield { kind: "column", column, done: ++done, of: places.length };
  }
  for (const column of columns.confirmed()) yield { kind: "column", column, done, of: places.length };
  const away = drawn && confirmedDistances(first, columns, side.lengthMm, judge);
  const { sorted } = columns;
  return {
    accepted: true,
    chart: {
      request,
      side,
      basis: basisOf(ground, judge.vectors),
      without: judge.verdictWithout(),
      columns: sorted,
      exceptions: sorted.flatMap(exceptionsIn),
      ...(away && { distances: away }),
      solved: judge.solved,
      confirmed: judge.confirmedPlaces,
    },
  };
}

/** Told again until each place they name is confirmed. */
function confirmedDistances(
  at: Place,
  columns: TracedColumns,
  lengthMm: number,
  judge: PlaceJudge,
): NonNullable<OpeningChart["distances"]> {
  for (;;) {
    const told = distances(at, columns.at(at.centreMm), lengthMm, columns.sorted, (place) => judge.answer(place));
    if (toldPlaces(told).every(({ place, verdict }) => judge.confirmed(place).verdict === verdict)) return told;
  }
}

/** One place and width as a chart confirms it, the building solved with the opening in its first place. */
export function chartedPlace(
  scheme: Scheme,
  request: ChartRequest,
  place: Place,
  basis: StrengthBasis,
  memory: StrengthMemory,
): ChartAnswer | ChartRefusal {
  const answer = trialGround(scheme, request, firstPlace(scheme, request), basis, memory);
  if (!answer.accepted) return answer;
  return new PlaceJudge(answer.ground, "all sets").confirmed(place);
}

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
    assumed: request.framedWhereNeeded === true ? [...chartAssumed, bareAssumed] : chartAssumed,
  };
}

/** What a chart takes for granted beside what strength does; printed with it. */
const chartAssumed = [
  "traced under the runs and assumptions that decide where a place was looked at under all that govern the unit and its bearings: each width under those of them that decided at the nearest such place, and under more where a part that was beyond its strength already may be worse by what counts, or where a boundary of its column has moved; both sides of every boundary and the widest that works of each stretch under all that decide, but those under which the part that does not work is clearly beyond its strength, were its uses to stand to each other as where they were seen; the opening as drawn, where its answer changes and the widest of each verdict that works are confirmed under all that govern; any place under every run and with the whole building when it is asked for",
  "loads are those of the building with the opening in its first place, but for the weight of the frame: enclosure and internal pressure of wind do not follow the width; the building's lean follows it only where a place is looked at under all that govern",
  "the verdict is what the opening adds: parts, holds and runs that are worse by more than 2 %, new, or no longer within their strength; parts inside units that carry it or stand on it count where a place is looked at under all that govern, and everywhere once they decide there; parts of units farther off, pressures on single parts and walls of other units that no longer count only when a place is asked for",
  "on a wall with no other opening and nothing that bears but at its corners wider is taken never to be cheaper, and each column is asked for the last width of each verdict and the one after it: a use may dip by some hundredths from one width to the next, and a wider opening that would work again there is not looked for; on others it is asked at a few widths and closed in on where neighbours differ: an island between two widths that agree is told as they are, and looked at when its place is asked for; how far an opening may move is read from the columns where they agree and closed in on where they do not",
  "the lift is looked at where a width is the last that works, but for those no wider and no nearer the middle of such a wall than one that is far from its strength",
  "places and widths in steps of 50 mm; nothing is smoothed",
] as const;

const bareAssumed =
  "where an opening works with bare edges, it works as built; on a wall that has other openings or bearings bare edges are tried only where a framed one works";

/** Wider openings that fare better than the narrower ones before them. */
function exceptionsIn({ centreMm, stretches }: ChartColumn): ChartException[] {
  return stretches.flatMap((wider, n) => {
    const narrower = stretches[n - 1];
    return narrower !== undefined && verdictRank[wider.verdict] < verdictRank[narrower.verdict]
      ? [{ centreMm, narrower, wider }]
      : [];
  });
}
