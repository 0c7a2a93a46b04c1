import type { Scheme } from "@cornerway/schema";
import type { ChartAnswer, ChartFineness, ChartRefusal, ChartRequest, ChartStep } from "./chart/chart.ts";
import type { Place } from "./chart/chart-side.ts";
import { confirmPlace, type Confirmation } from "./chart/confirm-place.ts";
import { chartedPlace, tracedChart, type ChartAnswerOf, type SharedChart } from "./chart/opening-chart.ts";
import { tracedHalf, type HalfWord } from "./chart/other-half.ts";
import { rememberedBasis } from "./chart/remembered-basis.ts";
import { checkBasisOf } from "./checks/check-basis.ts";
import { designBasisFor } from "./codes/loads/design-basis-for.ts";
import { strengthMemory } from "./strength/strength-memory.ts";
import type { StrengthBasis } from "./strength/strength-basis.ts";

/**
 * The opening chart of one side of one container in its real place: position × width by verdict, from the whole building's
 * loads. A column comes with every step; whoever stops asking stops it. Pure. Lengths mm. Screening.
 */
export function* openingChart(
  scheme: Scheme,
  request: ChartRequest,
  fineness: ChartFineness = usualFineness,
): Generator<ChartStep, ChartAnswerOf> {
  const tracing = tracedChart(scheme, request, fineness, basisOf(scheme), strengthMemory(), false);
  for (let next = tracing.next([]); ; next = tracing.next([])) {
    if (next.done === true) return next.value;
    if (next.value.kind !== "awaits the other half") yield next.value;
  }
}

/** The same, half of its columns traced by another thread meanwhile (`otherHalfOfChart`); run by `RunHalves`. */
export const sharedOpeningChart = (
  scheme: Scheme,
  request: ChartRequest,
  fineness: ChartFineness = usualFineness,
): SharedChart => tracedChart(scheme, request, fineness, basisOf(scheme), strengthMemory(), true);

/** What that thread tells, word by word, plain data. */
export const otherHalfOfChart = (
  scheme: Scheme,
  request: ChartRequest,
  fineness: ChartFineness = usualFineness,
): Generator<HalfWord, void> => tracedHalf(scheme, request, fineness, basisOf(scheme), strengthMemory());

/** One place and width of a chart under all runs, all sets of assumptions and its own loads, with neighbours. mm. */
export function confirmOpening(scheme: Scheme, request: ChartRequest, place: Place): Confirmation | ChartRefusal {
  return confirmPlace(scheme, request, place, basisOf(scheme), strengthMemory());
}

/** One place and width as a chart answers it. mm. */
export function chartedOpening(scheme: Scheme, request: ChartRequest, place: Place): ChartAnswer | ChartRefusal {
  return chartedPlace(scheme, request, place, basisOf(scheme), strengthMemory());
}

const basisOf = ({ site: { edition } }: Scheme): StrengthBasis => ({
  loads: designBasisFor(edition),
  factored: rememberedBasis(checkBasisOf(edition, "LRFD")),
  allowable: rememberedBasis(checkBasisOf(edition, "ASD")),
});

export const usualFineness: ChartFineness = { apartMm: 600, envelope: "deciding sets" };
