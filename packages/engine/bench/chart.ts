import { readFileSync } from "node:fs";
import { readScheme, type Scheme } from "@cornerway/schema";
import type { ChartRequest } from "../src/chart/chart.ts";
import { openingChart, usualFineness } from "../src/opening-chart.ts";
import { drawnUnit } from "../test/strength/drawn-unit.ts";
import { sharedChart } from "./support/shared-chart.ts";

/**
 * The chart of a plain 40 ft side and of one of the demo, in seconds of processor: until the side is there, until its first column,
 * until all, and for a place; then by the clock, half of it traced by another thread as in a page, code and memory of both cold.
 * `APART=400` spaces columns otherwise, mm; words name which: `plain`, `demo`.
 */
const apartMm = Number(process.env["APART"] ?? usualFineness.apartMm);
/** By the clock. */
const MOST_S = 3;

const door: Omit<ChartRequest, "containerId"> = {
  ...{ face: "right", sillUm: 180_000, heightUm: 2_200_000, use: "door", framed: true, framedWhereNeeded: true },
};
const subjects: Readonly<Record<string, () => { readonly scheme: Scheme; readonly request: ChartRequest }>> = {
  plain: () => ({ scheme: drawnUnit({ type: "1AAA" }), request: { ...door, containerId: "u1" } }),
  demo: () => {
    const read = readScheme(
      JSON.parse(readFileSync(new URL("../../../shared/demo/scheme.json", import.meta.url), "utf8")),
    );
    const drawn = read.ok ? read.scheme.openings.find(({ id }) => id === "d3") : undefined;
    if (!read.ok || drawn === undefined) throw new Error("the demo has an opening d3");
    const { containerId, sillUm, heightUm, use, id } = drawn;
    return { scheme: read.scheme, request: { ...door, containerId, sillUm, heightUm, use, openingId: id } };
  },
};

const words = process.argv.slice(2);
for (const name of words.length > 0 ? words : Object.keys(subjects)) {
  const subject = subjects[name]?.();
  if (subject === undefined) throw new Error(`there is no ${name}: ${Object.keys(subjects).join(", ")}`);
  report(name, subject.scheme, subject.request);
  await reportShared(name, subject.scheme, subject.request);
}

function report(name: string, scheme: Scheme, request: ChartRequest): void {
  const from = process.cpuUsage();
  const spentS = (): number => process.cpuUsage(from).user / 1e6;
  const at: string[] = [];
  const tracing = openingChart(scheme, request, { ...usualFineness, apartMm });
  for (;;) {
    const step = tracing.next();
    if (step.done === true) {
      if (!step.value.accepted) throw new Error("the hazards are accepted");
      const { solved, confirmed, basis, columns } = step.value.chart;
      const sets = basis.vectors.map(({ assumptions, runs }) => `${assumptions} × ${runs.length}`);
      const whole = spentS();
      console.log(
        `${name}: ${at.join(", ")}, ${columns.length} columns ${whole.toFixed(1)} s; ${solved} solutions, ${confirmed} places confirmed, ${((1000 * whole) / solved).toFixed(0)} ms each; decided by ${sets.join(", ")}`,
      );
      return;
    }
    if (step.value.kind === "side") at.push(`side ${spentS().toFixed(1)} s`);
    else if (step.value.done === 1 && at.length === 1) at.push(`first column ${spentS().toFixed(1)} s`);
  }
}

async function reportShared(name: string, scheme: Scheme, request: ChartRequest): Promise<void> {
  const from = performance.now();
  const at: string[] = [];
  const elapsedS = (): number => (performance.now() - from) / 1000;
  const { columns, solved } = await sharedChart(scheme, request, { ...usualFineness, apartMm }, (step) => {
    if (step.kind === "side") at.push(`side ${elapsedS().toFixed(1)} s`);
    else if (at.length === 1) at.push(`first column ${elapsedS().toFixed(1)} s`);
  });
  const whole = elapsedS();
  console.log(
    `${name}, by two threads: ${at.join(", ")}, ${columns.length} columns ${whole.toFixed(1)} s by the clock of ${MOST_S} s; ${solved} solutions`,
  );
  if (whole > MOST_S) process.exitCode = 1;
}
