import type { Verdict } from "@cornerway/schema";
import { STEP_MM, type ChartAnswer, type ChartColumn, type ChartDistances } from "./chart.ts";
import type { Place } from "./chart-side.ts";
import { tracedRuns } from "./traced-runs.ts";

type Change = ChartDistances["changes"][number];

/**
 * How far an opening as drawn is from where its answer changes: wider and narrower about its centre from the column at its
 * centre, and moved either way at its width, to the step. `columns` are those of the chart: where one stands near a place and
 * its answer at that width is that of the opening, the place is not asked again.
 */
export function distances(
  at: Place,
  column: ChartColumn,
  lengthMm: number,
  columns: readonly ChartColumn[],
  answerAt: (place: Place) => ChartAnswer,
): ChartDistances {
  const answer = answerAt(at);
  const isTold = (centreMm: number): boolean => told(columns, { ...at, centreMm }) === answer.verdict;
  return {
    ...at,
    answer,
    changes: [
      ...wider(at, answer, column),
      ...narrower(at, answer, column),
      ...moved("to the front end", -1, at.centreMm - at.widthMm / 2, at, answer, isTold, answerAt),
      ...moved("to the door end", 1, lengthMm - at.centreMm - at.widthMm / 2, at, answer, isTold, answerAt),
    ],
  };
}

function wider({ widthMm }: Place, { verdict }: ChartAnswer, { stretches }: ChartColumn): Change[] {
  const next = stretches.find((stretch) => stretch.toMm > widthMm && stretch.verdict !== verdict);
  if (next === undefined) return [];
  const { fromMm, toMm: _, ...answer } = next;
  return [{ way: "wider", byMm: Math.max(0, fromMm - widthMm), answer }];
}

function narrower({ widthMm }: Place, { verdict }: ChartAnswer, { stretches }: ChartColumn): Change[] {
  const next = stretches.findLast((stretch) => stretch.fromMm < widthMm && stretch.verdict !== verdict);
  if (next === undefined) return [];
  const { fromMm: _, toMm, ...answer } = next;
  return [{ way: "narrower", byMm: Math.max(0, widthMm - toMm), answer }];
}

/** Steps between the places asked on the way. */
const ASKED_APART = 8;

/** What the nearest column says of a place; undefined where none stands nearer than half the way to the next place asked. */
function told(columns: readonly ChartColumn[], { centreMm, widthMm }: Place): Verdict | undefined {
  const near = columns.filter((column) => 2 * Math.abs(column.centreMm - centreMm) <= ASKED_APART * STEP_MM);
  const [nearest] = near.toSorted((a, b) => Math.abs(a.centreMm - centreMm) - Math.abs(b.centreMm - centreMm));
  return nearest?.stretches.find(({ fromMm, toMm }) => fromMm <= widthMm && widthMm <= toMm)?.verdict;
}

function moved(
  way: Change["way"],
  sign: 1 | -1,
  roomMm: number,
  at: Place,
  { verdict }: ChartAnswer,
  isTold: (centreMm: number) => boolean,
  answerAt: (place: Place) => ChartAnswer,
): Change[] {
  const most = Math.floor(roomMm / STEP_MM);
  const asked = Array.from({ length: Math.ceil(most / ASKED_APART) + 1 }, (_, n) => Math.min(most, n * ASKED_APART));
  const placeAt = (step: number): number => at.centreMm + sign * step * STEP_MM;
  const answerOf = (step: number): ChartAnswer => answerAt({ ...at, centreMm: placeAt(step) });
  let from = 0;
  for (const to of asked.slice(1)) {
    if (isTold(placeAt(to))) continue;
    const change = tracedRuns([from, to], answerOf).find(({ answer }) => answer.verdict !== verdict);
    if (change !== undefined) return [{ way, byMm: change.from * STEP_MM, answer: answerOf(change.from) }];
    from = to;
  }
  return [];
}

/** The places at which distances were told: as drawn, where the answer changes, and the last before, with the verdict of each. */
export function toldPlaces({
  centreMm,
  widthMm,
  answer,
  changes,
}: ChartDistances): { place: Place; verdict: Verdict }[] {
  return [
    { place: { centreMm, widthMm }, verdict: answer.verdict },
    ...changes.flatMap(({ way, byMm, answer: then }) => {
      const at = (mm: number): Place => placeAlong({ centreMm, widthMm }, way, mm);
      const last = byMm <= STEP_MM ? [] : [{ place: at(byMm - STEP_MM), verdict: answer.verdict }];
      return [...last, { place: at(byMm), verdict: then.verdict }];
    }),
  ];
}

function placeAlong({ centreMm, widthMm }: Place, way: Change["way"], byMm: number): Place {
  if (way === "wider") return { centreMm, widthMm: widthMm + byMm };
  if (way === "narrower") return { centreMm, widthMm: widthMm - byMm };
  return { centreMm: way === "to the front end" ? centreMm - byMm : centreMm + byMm, widthMm };
}
