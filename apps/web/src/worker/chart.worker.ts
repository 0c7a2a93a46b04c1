import { confirmOpening, hazardRefusalText, openingChart } from "@cornerway/engine";
import type { ChartQuestion, ChartWord } from "./chart-messages.ts";

const tell = (word: ChartWord) => postMessage(word);

/** Opening charts on a thread of their own: a column at a time, told as they come. */
addEventListener("message", ({ data }: MessageEvent<ChartQuestion>) => {
  try {
    if (data.kind === "draw") draw(data);
    else confirm(data);
  } catch (error) {
    tell({ kind: "broke", turn: data.turn, why: error instanceof Error ? error.message : String(error) });
  }
});

function draw({ turn, scheme, request }: Extract<ChartQuestion, { kind: "draw" }>): void {
  const tracing = openingChart(scheme, request);
  for (;;) {
    const step = tracing.next();
    if (step.done !== true) tell({ ...step.value, turn });
    else if (step.value.accepted) return tell({ kind: "drawn", turn, chart: step.value.chart });
    else return tell({ kind: "broke", turn, why: step.value.refusals.map(hazardRefusalText).join(" ") });
  }
}

function confirm({ turn, scheme, request, place }: Extract<ChartQuestion, { kind: "confirm" }>): void {
  const full = confirmOpening(scheme, request, place);
  if (!full.accepted) return tell({ kind: "broke", turn, why: full.refusals.map(hazardRefusalText).join(" ") });
  tell({ kind: "confirmed", turn, confirmed: { place, answer: full.answer, unit: full.unit } });
}
