import { assess } from "@cornerway/engine";
import { emptyScheme, readScheme, Scheme, type Container, type Opening } from "@cornerway/schema";
import { readFileSync } from "node:fs";

/** Budgets: the demo is re-marked in 5 ms while drawing, the largest scheme (500 containers) in 100 ms. Medians. */
const budgets = [
  { name: "demo, 9 containers", scheme: demo(), most: 5, runs: 200 },
  { name: "500 containers, 1000 openings, five storeys", scheme: large(), most: 100, runs: 30 },
];

for (const { name, scheme, most, runs } of budgets) {
  const { wallMs, processorMs } = medians(runs, () => assess(scheme));
  const over = processorMs > most;
  console.log(
    `${name}: median ${processorMs.toFixed(2)} ms of processor (${wallMs.toFixed(2)} ms by the clock) of ${most} ms${over ? ", over budget" : ""}`,
  );
  if (over) process.exitCode = 1;
}

function demo(): Scheme {
  const reading = readScheme(
    JSON.parse(readFileSync(new URL("../../../shared/demo/scheme.json", import.meta.url), "utf8")),
  );
  if (!reading.ok) throw new Error("the demo scheme is not a scheme");
  return reading.scheme;
}

/** Five storeys of 100 units in ten rows of ten, every second one shifted a metre, two windows in each. */
function large(): Scheme {
  const containers: Container[] = [];
  const openings: Opening[] = [];
  for (let at = 0; at < 500; at += 1) {
    const storey = Math.floor(at / 100);
    const id = `u${String(at).padStart(3, "0")}`;
    const shifted = at % 2 === 1 ? storey * 1_000_000 : 0;
    containers.push({
      id,
      tag: `U${at + 1}`,
      type: "1AAA",
      xUm: (at % 10) * 20_000_000 + shifted,
      yUm: (Math.floor(at / 10) % 10) * 2_500_000,
      zUm: storey * 2_896_000,
      turnMdeg: 0,
    });
    for (const [side, face] of (["left", "right"] as const).entries())
      openings.push({
        id: `w${String(2 * at + side).padStart(4, "0")}`,
        tag: `W${2 * at + side + 1}`,
        containerId: id,
        face,
        use: "window",
        offsetUm: 3_000_000,
        sillUm: 900_000,
        widthUm: 2_400_000,
        heightUm: 1_400_000,
        framed: true,
      });
  }
  return Scheme.parse({ ...emptyScheme, containers, openings });
}

/** Time of one run by the clock and of the processor; the second is what a busy machine leaves alone. */
function medians(runs: number, work: () => unknown): { wallMs: number; processorMs: number } {
  for (let run = 0; run < runs / 4; run += 1) work();
  const times = Array.from({ length: runs }, () => {
    const wall = performance.now();
    const processor = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(processor);
    return { wallMs: performance.now() - wall, processorMs: (user + system) / 1000 };
  });
  return {
    wallMs: middle(times.map(({ wallMs }) => wallMs)),
    processorMs: middle(times.map((time) => time.processorMs)),
  };
}

function middle(values: number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
}
