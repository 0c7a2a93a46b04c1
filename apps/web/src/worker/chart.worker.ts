import {
  confirmOpening,
  hazardRefusalText,
  RunHalves,
  sharedOpeningChart,
  type ChartAnswerOf,
} from "@cornerway/engine";
import { startHalf } from "./chart-half.ts";
import type { ChartQuestion, ChartWord } from "./chart-messages.ts";

const tell = (word: ChartWord) => postMessage(word);

/** Opening charts on a thread of their own: a column at a time, told as they come. */
addEventListener("message", ({ data }: MessageEvent<ChartQuestion>) => {
  try {
    if (data.kind === "draw") draw(data);
    else confirm(data);
  } catch (error) {
    broke(data.turn, error);
  }
});

const broke = (turn: number, error: unknown) =>
  tell({ kind: "broke", turn, why: error instanceof Error ? error.message : String(error) });

/** Half of the columns here, the other half beside; what is asked meanwhile is answered between columns. */
function draw({ turn, scheme, request }: Extract<ChartQuestion, { kind: "draw" }>): void {
  const run = new RunHalves(sharedOpeningChart(scheme, request), {
    step: (step) => tell({ ...step, turn }),
    settle: (answer) => tellAnswer(turn, answer),
    fail: (error) => broke(turn, error),
    breathe: (goOn) => setTimeout(goOn, 0),
  });
  startHalf(scheme, request, (word) => run.hear(word));
  run.goOn();
}

function tellAnswer(turn: number, answer: ChartAnswerOf): void {
  if (answer.accepted) tell({ kind: "drawn", turn, chart: answer.chart });
  else tell({ kind: "broke", turn, why: answer.refusals.map(hazardRefusalText).join(" ") });
}

function confirm({ turn, scheme, request, place }: Extract<ChartQuestion, { kind: "confirm" }>): void {
  const full = confirmOpening(scheme, request, place);
  if (!full.accepted) return tell({ kind: "broke", turn, why: full.refusals.map(hazardRefusalText).join(" ") });
  tell({ kind: "confirmed", turn, confirmed: { place, answer: full.answer, unit: full.unit } });
}
