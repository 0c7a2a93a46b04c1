import { STEP_MM, type ChartAnswer, type ChartColumn, type ChartDistances } from "./chart.ts";
import type { Place } from "./chart-side.ts";
import { tracedRuns } from "./trace-column.ts";

type Change = ChartDistances["changes"][number];

/**
 * How far an opening as drawn is from where its answer changes: wider and narrower about its centre from the column at its
 * centre, and moved either way at its width, to the step.
 */
export function distances(
  at: Place,
  column: ChartColumn,
  lengthMm: number,
  answerAt: (place: Place) => ChartAnswer,
): ChartDistances {
  const answer = answerAt(at);
  return {
    ...at,
    answer,
    changes: [
      ...wider(at, answer, column),
      ...narrower(at, answer, column),
      ...moved("to the front end", -1, at.centreMm - at.widthMm / 2, at, answer, answerAt),
      ...moved("to the door end", 1, lengthMm - at.centreMm - at.widthMm / 2, at, answer, answerAt),
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

/** Places asked on the way, mm apart. */
const ASKED_APART = 8;

function moved(
  way: Change["way"],
  sign: 1 | -1,
  roomMm: number,
  at: Place,
  { verdict }: ChartAnswer,
  answerAt: (place: Place) => ChartAnswer,
): Change[] {
  const most = Math.floor(roomMm / STEP_MM);
  const asked = Array.from({ length: Math.ceil(most / ASKED_APART) + 1 }, (_, n) => Math.min(most, n * ASKED_APART));
  const answerOf = (step: number): ChartAnswer => answerAt({ ...at, centreMm: at.centreMm + sign * step * STEP_MM });
  for (let n = 1; n < asked.length; n++) {
    const [from, to] = [asked[n - 1] ?? 0, asked[n] ?? 0];
    const change = tracedRuns([from, to], answerOf).find(({ answer }) => answer.verdict !== verdict);
    if (change !== undefined) return [{ way, byMm: change.from * STEP_MM, answer: answerOf(change.from) }];
  }
  return [];
}
