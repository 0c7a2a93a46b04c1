import { Worker } from "node:worker_threads";
import type { Scheme } from "@cornerway/schema";
import type { ChartFineness, ChartRequest, ChartStep, OpeningChart } from "../../src/chart/chart.ts";
import type { HalfWord } from "../../src/chart/other-half.ts";
import { RunHalves } from "../../src/chart/run-halves.ts";
import { sharedOpeningChart } from "../../src/opening-chart.ts";

/** A chart drawn by two threads, as a page draws it; ends the other once it is drawn. */
export async function sharedChart(
  scheme: Scheme,
  request: ChartRequest,
  fineness: ChartFineness,
  step: (step: ChartStep) => void,
): Promise<OpeningChart> {
  const worker = new Worker(new URL("./boot.mjs", import.meta.url), {
    workerData: { entry: new URL("./half-thread.ts", import.meta.url).href, scheme, request, fineness },
    execArgv: ["--conditions=development"],
  });
  try {
    return await new Promise((settle, fail) => {
      const run = new RunHalves(sharedOpeningChart(scheme, request, fineness), {
        step,
        settle: (answer) => {
          if (answer.accepted) settle(answer.chart);
          else fail(new Error("the hazards are accepted"));
        },
        fail,
        breathe: (goOn) => setTimeout(goOn, 0),
      });
      worker.on("message", (word: HalfWord) => run.hear(word));
      worker.on("error", fail);
      run.goOn();
    });
  } finally {
    await worker.terminate();
  }
}
