import { parentPort, workerData } from "node:worker_threads";
import { otherHalfOfChart } from "../../src/opening-chart.ts";

const { scheme, request, fineness } = workerData;
for (const word of otherHalfOfChart(scheme, request, fineness)) parentPort?.postMessage(word);
