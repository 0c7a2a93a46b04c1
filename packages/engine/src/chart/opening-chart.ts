import type { Scheme } from "@cornerway/schema";
import type { StrengthMemory } from "../strength/solve-runs.ts";
import type { StrengthBasis } from "../strength/strength-basis.ts";
import { verdictRank } from "../marks/verdicts-of.ts";
import type {
  ChartAnswer,
  ChartColumn,
  ChartException,
  ChartFineness,
  ChartRefusal,
  ChartRequest,
  ChartStep,
  OpeningChart,
} from "./chart.ts";
import { allVectors, chartBasis, vectorsOf } from "./chart-basis.ts";
import type { Place } from "./chart-side.ts";
import { distances, toldPlaces } from "./distances.ts";
import { PlaceJudge } from "./judge-place.ts";
import { OtherHalf, type HalfWord } from "./other-half.ts";
import { firstPlace, startedChart } from "./started-chart.ts";
import type { TracedColumns } from "./traced-columns.ts";
import { trialGround } from "./trial-ground.ts";

export type ChartAnswerOf = { readonly accepted: true; readonly chart: OpeningChart } | ChartRefusal;

/**
 * A chart on its way; it is given what was told of its other half since. Where nothing is left but what another thread traces, it
 * awaits that.
 */
export type SharedChart = Generator<
  ChartStep | { readonly kind: "awaits the other half" },
  ChartAnswerOf,
  readonly HalfWord[]
>;

/**
 * The chart of one side, a column at a time, the nearest to the opening first: the building solved whole once, the boundaries of one
 * column found under every vector that governs, then every place and width under those that decided there, the container alone
 * condensed anew. What people are told
 * of a region or of the opening as drawn is confirmed under every vector; where it is not, what decides there joins and the
 * columns are traced anew. Stop asking and it stops. `isShared`: whether another thread traces the other half (`tracedHalf`).
 */
export function* tracedChart(
  scheme: Scheme,
  request: ChartRequest,
  fineness: ChartFineness,
  basis: StrengthBasis,
  memory: StrengthMemory,
  isShared: boolean,
): SharedChart {
  const started = startedChart(scheme, request, fineness, basis, memory);
  if (!started.accepted) return started;
  const { drawn, first, ground, side, judge, columns, centres, halves } = started;
  const other = new OtherHalf(isShared ? halves.beside : []);
  const of = centres.length;
  let done = 0;
  function* tell(column: ChartColumn): SharedPart {
    const words = yield { kind: "column", column, done: ++done, of };
    yield* hear(words);
  }
  function* hear(words: readonly HalfWord[]): SharedPart {
    for (const column of other.hear(words)) yield* tell(column);
  }

  yield* hear(yield { kind: "side", side, of });
  judge.confirmed(first);
  for (const [n, centreMm] of (isShared ? halves.own : centres).entries())
    yield* tell(n === 0 ? columns.traceSurely(centreMm) : columns.trace(centreMm));
  while (isShared && other.isAwaited) yield* hear(yield { kind: "awaits the other half" });
  for (const centreMm of other.missing) yield* tell(columns.trace(centreMm));
  columns.take(other.columns);
  for (const column of columns.confirmed()) yield { kind: "column", column, done, of };
  const away = drawn && confirmedDistances(first, columns, side.lengthMm, judge);
  const { sorted } = columns;
  return {
    accepted: true,
    chart: {
      request,
      side,
      basis: chartBasis(ground, allVectors(vectorsOf(judge.vectors), other.vectors)),
      without: judge.verdictWithout(),
      columns: sorted,
      exceptions: sorted.flatMap(exceptionsIn),
      ...(away && { distances: away }),
      solved: judge.solved + other.solved,
      confirmed: judge.confirmedPlaces + other.confirmed,
    },
  };
}

type SharedPart = Generator<ChartStep, void, readonly HalfWord[]>;

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

/** Wider openings that fare better than the narrower ones before them. */
function exceptionsIn({ centreMm, stretches }: ChartColumn): ChartException[] {
  return stretches.flatMap((wider, n) => {
    const narrower = stretches[n - 1];
    return narrower !== undefined && verdictRank[wider.verdict] < verdictRank[narrower.verdict]
      ? [{ centreMm, narrower, wider }]
      : [];
  });
}
