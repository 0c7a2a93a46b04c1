import type { Opening, Scheme } from "@cornerway/schema";
import { buildingOf } from "../geometry/building.ts";
import type { StrengthMemory } from "../strength/solve-runs.ts";
import type { StrengthBasis } from "../strength/strength-basis.ts";
import { STEP_MM, type ChartFineness, type ChartRefusal, type ChartRequest, type ChartSide } from "./chart.ts";
import { chartPlaces } from "./chart-places.ts";
import { chartSide, forbids, type Place } from "./chart-side.ts";
import { halvesOf, type Halves } from "./halves.ts";
import { PlaceJudge } from "./judge-place.ts";
import { NARROWEST_MM } from "./trace-column.ts";
import { isPlain, TracedColumns } from "./traced-columns.ts";
import { trialGround, type TrialGround } from "./trial-ground.ts";
import { without } from "./trial-opening.ts";

/** What the columns of one side are traced with, and where they stand. */
export type StartedChart = {
  readonly accepted: true;
  /** As it is drawn, where it is. */
  readonly drawn: Opening | undefined;
  /** Where the opening was when the building was solved whole. */
  readonly first: Place;
  readonly ground: TrialGround;
  readonly side: ChartSide;
  readonly judge: PlaceJudge;
  readonly columns: TracedColumns;
  /** Centres of columns, mm, the nearest to the first place first. */
  readonly centres: readonly number[];
  readonly halves: Halves;
};

/** The building solved whole once. */
export function startedChart(
  scheme: Scheme,
  request: ChartRequest,
  fineness: ChartFineness,
  basis: StrengthBasis,
  memory: StrengthMemory,
): StartedChart | ChartRefusal {
  const drawn = scheme.openings.find(({ id }) => id === request.openingId);
  const first = drawn === undefined ? firstPlace(scheme, request) : placeOf(drawn);
  const answer = trialGround(scheme, request, first, basis, memory);
  if (!answer.accepted) return answer;
  const { ground } = answer;
  const side = chartSide(ground.unit, request, ground.ownBearings, ground.whole.solved);
  const judge = new PlaceJudge(ground, fineness.envelope, isPlain(side));
  const centres = chartPlaces(side.lengthMm, side.sheet.u0, side.sheet.u1, fineness.apartMm, first.centreMm);
  const isFree = (centreMm: number): boolean => judge.forbidden({ centreMm, widthMm: NARROWEST_MM }) === undefined;
  const halves = halvesOf(centres, isFree);
  return {
    ...{ accepted: true, drawn, first, ground, side, judge, centres, halves },
    columns: new TracedColumns(judge, side),
  };
}

const placeOf = ({ offsetUm, widthUm }: Opening): Place => ({
  centreMm: (offsetUm + widthUm / 2) / 1000,
  widthMm: widthUm / 1000,
});

/** An ordinary door, to find the runs that govern, at the free place nearest the middle; the middle where none is free. */
export function firstPlace(scheme: Scheme, request: ChartRequest): Place {
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
