import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { buildingLoads } from "../src/analysis/building-loads.ts";
import { buildingSystem } from "../src/analysis/building-system.ts";
import { settleContact } from "../src/analysis/contact.ts";
import { prepare } from "../src/analysis/prepare.ts";
import { bearingStates } from "../src/analysis/bearing-states.ts";
import { recoverUnit } from "../src/analysis/recover-unit.ts";
import { solveMovements } from "../src/analysis/solve-movement.ts";
import { allClosed } from "../src/analysis/system.ts";
import { condensationCache, solveBuilding } from "../src/building.ts";
import type { BuildingModel } from "../src/model/building-model.ts";
import { generalSolver } from "./support/general-solver.ts";
import { COMBINATIONS, stackedModel, stackedScheme } from "./support/stacked-building.ts";

/** Medians over this many runs; processor time of this process beside wall time, since other work shares the cores. */
const RUNS = Number(process.argv[3] ?? 3);
const SIZES = (process.argv[2] ?? process.env.SIZES ?? "1,9,64,256,500").split(",").map(Number);
const LIMIT_BYTES = 2e9;
/** Containers and processor time from cold, for the growth printed at the end. */
const fromCold: { count: number; cpuMs: number }[] = [];

interface Timed {
  wallMs: number;
  cpuMs: number;
}

function timed<T>(work: () => T): [T, Timed] {
  const cpu = process.cpuUsage();
  const start = performance.now();
  const result = work();
  const used = process.cpuUsage(cpu);
  return [result, { wallMs: performance.now() - start, cpuMs: used.user / 1000 }];
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;
}

function measure(run: () => void): Timed {
  return medians(Array.from({ length: RUNS }, () => timed(run)[1]));
}

function medians(all: readonly Timed[]): Timed {
  return { wallMs: median(all.map(({ wallMs }) => wallMs)), cpuMs: median(all.map(({ cpuMs }) => cpuMs)) };
}

function inWords({ wallMs, cpuMs }: Timed): string {
  return `${wallMs.toFixed(1)} ms wall, ${cpuMs.toFixed(1)} ms processor`;
}

/** Slope of log time over log size by least squares: time grows as containers to this power. */
function growth(points: readonly { count: number; cpuMs: number }[]): number {
  const logs = points.map(({ count, cpuMs }) => [Math.log(count), Math.log(cpuMs)] as const);
  const [x, y] = [0, 1].map((c) => logs.reduce((sum, pair) => sum + (pair[c] ?? 0), 0) / logs.length);
  const about = logs.map(([a, b]) => [a - (x ?? 0), b - (y ?? 0)] as const);
  return about.reduce((sum, [a, b]) => sum + a * b, 0) / about.reduce((sum, [a]) => sum + a * a, 0);
}

/** One pass, step by step, with the share of each. */
function steps(model: BuildingModel): void {
  const cache = condensationCache(LIMIT_BYTES);
  const spent: [string, number][] = [];
  const step = <T>(name: string, work: () => T): T => {
    const [result, { cpuMs }] = timed(work);
    spent.push([name, cpuMs]);
    return result;
  };
  const assembly = step("condense, loads brought to bearings", () => buildingSystem(model, cache));
  if (!assembly.stable) throw new Error("a container of the bench is a mechanism");
  const { building } = assembly;
  const combos = Object.values(model.combos);
  const loads = step("combine loads", () => combos.map((combo) => buildingLoads(building, combo)));
  const closed = step("factorise the interface", () =>
    prepare(building.frame.system, allClosed(building.frame.system), cache.building),
  );
  if (!closed.stable) throw new Error("the bench building is a mechanism");
  const { tree, panels } = closed.prepared.factor;
  const bases = step("solve", () => solveMovements(closed.prepared, loads));
  const states = bearingStates(building.frame.system, cache.building.branch());
  const outcomes = step("contact", () => settleContact(building.frame.system, closed.prepared, loads, bases, states));
  step("recover one container in all combinations", () =>
    building.units.slice(0, 1).map((unit) =>
      recoverUnit(
        unit,
        combos.map((combo, s) => ({ combo, movement: bases[s]?.movement ?? new Float64Array() })),
      ).map(({ memberEndForces, panelFlows }) => [memberEndForces, panelFlows]),
    ),
  );
  const total = spent.reduce((sum, [, ms]) => sum + ms, 0);
  const inner = building.units.reduce((sum, { condensed }) => sum + condensed.factor.tree.equations, 0);
  console.log(
    `  interface unknowns ${tree.equations}, unknowns of the uncondensed building about ${inner}, entries of L ${panels.reduce((sum, panel) => sum + panel.length, 0)}`,
  );
  console.log(
    `  bearings open per vector ${outcomes.map((o) => (o.settled ? o.prepared.state.open.reduce((sum, flag) => sum + flag, 0) : "refused")).join(" ")}; rounds ${outcomes.map(({ rounds }) => rounds).join(" ")}`,
  );
  for (const [name, ms] of spent)
    console.log(
      `  ${name.padEnd(42)} ${ms.toFixed(1).padStart(8)} ms ${((100 * ms) / total).toFixed(0).padStart(3)} %`,
    );
}

/** Below this size the first run is compilation more than solving. */
const GROWTH_FROM = 9;

/** Beyond this size the general solver takes minutes on shared cores. */
const COMPARED_UP_TO = 64;

function compare(one: BuildingModel): void {
  const [, ours] = timed(() => solveBuilding(one, condensationCache(LIMIT_BYTES)));
  const general = generalSolver(one);
  if (general === null) console.log("  general sparse solver: not compared (SciPy is not there)");
  else {
    const ratio = (general.cpuMs / ours.cpuMs).toFixed(2);
    console.log(
      `  general sparse LU on ${general.unknowns} unknowns, factor and one solve: ${general.wallMs} ms wall, ${general.cpuMs} ms processor; ${ratio} times ours from cold, elements and contact included`,
    );
  }
}

/**
 * So many edits on one cache, each of another container. The first of them run code that is not compiled yet, and some of what an
 * edit of few containers runs is compiled only after some twenty: whoever draws has the code warm, so there the later ones are
 * told by themselves.
 */
const EDITS = 24;
const EDITS_OF_FEW = 120;
const FIRST_EDITS = 3;
const FEW = 9;

/** Each edit moves the window of one container to where it has not been, so that this one container is condensed anew. */
function edits(count: number, model: BuildingModel): void {
  const cache = condensationCache(LIMIT_BYTES);
  solveBuilding(model, cache);
  const editable = Math.max(1, Math.floor(count / 2));
  const all = Array.from({ length: count <= FEW ? EDITS_OF_FEW : EDITS }, (_, n) => {
    const edited = stackedModel(stackedScheme(count, 2 * ((n % editable) + 1), 1 + n), model.combos);
    const before = cache.condensed;
    const [, spent] = timed(() => solveBuilding(edited, cache));
    if (count > 1 && cache.condensed !== before + 1) throw new Error("an edit condenses one container");
    return spent;
  });
  console.log(`  first edits, all vectors: ${inWords(medians(all.slice(0, FIRST_EDITS)))}`);
  const bearings = { ...model, links: model.links.map((link) => ({ ...link, compression_only: false })) };
  console.log(`  one edit, all vectors:    ${inWords(medians(all.slice(FIRST_EDITS, EDITS)))}`);
  if (count <= FEW) console.log(`  the same, code warm:      ${inWords(medians(all.slice(EDITS)))}`);
  console.log(`  the same, nothing changed: ${inWords(measure(() => solveBuilding(model, cache)))}`);
  console.log(`  the same, bearings hold:  ${inWords(measure(() => solveBuilding(bearings, cache)))}`);
}

/** Sizes on which many load vectors are solved for, and how many. */
const MANY_ON = [9, 64];
const MANY = 800;

/** The bench's combinations over and over, every factor a little less each time. */
function manyVectors(model: BuildingModel): void {
  const known = Object.values(COMBINATIONS);
  const combos = Object.fromEntries(
    Array.from({ length: MANY }, (_, n) => {
      const combo = Object.entries(known[n % known.length] ?? {});
      return [
        `${n}`,
        Object.fromEntries(combo.map(([name, factor], c) => [name, factor * (1 - ((n * (c + 3)) % 97) / 1000)])),
      ];
    }),
  );
  const cache = condensationCache(LIMIT_BYTES);
  const [result, solved] = timed(() => solveBuilding({ ...model, combos }, cache));
  const answers = Object.values(result.combos).flatMap((one) => ("refused" in one ? [] : [one]));
  const [, between] = timed(() => answers.map(({ frame }) => frame.residual));
  const [, inside] = timed(() => {
    for (const { id } of model.units)
      for (const one of answers) {
        const { memberEndForces, panelFlows } = one.unit(id);
        if (Object.keys(memberEndForces).length + Object.keys(panelFlows).length === 0) throw new Error("no forces");
      }
  });
  console.log(
    `  ${answers.length} vectors: solved ${inWords(solved)}; between the containers ${inWords(between)}; inside all ${inWords(inside)}`,
  );
}

/** MB; this process holds what all its measurements leave, so the building is solved once more in another. */
function peakMemory(count: number): string {
  const script = fileURLToPath(new URL("support/peak-memory.ts", import.meta.url));
  const { status, stdout, stderr } = spawnSync(process.execPath, [...process.execArgv, script, `${count}`], {
    encoding: "utf8",
  });
  if (status !== 0) throw new Error(`the process that measures memory ended with ${status}: ${stderr}`);
  return stdout.trim();
}

for (const count of SIZES) {
  const scheme = stackedScheme(count);
  const [model, built] = timed(() => stackedModel(scheme));
  const one = { ...model, combos: { "1.2D+1.6L": COMBINATIONS["1.2D+1.6L"] ?? {} } };
  const fabrics = new Set(model.units.map(({ fragment }) => fragment.key)).size;
  console.log(
    `\n${count} containers, ${fabrics} distinct fabrics, ${Object.keys(model.combos).length} load vectors, ${model.links.length} links, ${model.springs.length} ties; scheme to lines ${built.cpuMs.toFixed(0)} ms`,
  );
  steps(model);
  const cold = measure(() => solveBuilding(one, condensationCache(LIMIT_BYTES)));
  fromCold.push({ count, cpuMs: cold.cpuMs });
  console.log(`  cold, 1 vector:      ${inWords(cold)}`);
  console.log(`  cold, all vectors:   ${inWords(measure(() => solveBuilding(model, condensationCache(LIMIT_BYTES))))}`);
  if (count <= COMPARED_UP_TO) compare(one);
  edits(count, model);
  if (MANY_ON.includes(count)) manyVectors(model);
  console.log(
    `  peak memory: drawn up, solved and edited in a process of its own ${peakMemory(count)} MB; this process so far ${(process.resourceUsage().maxRSS / 1024).toFixed(0)} MB`,
  );
}

const several = fromCold.filter(({ count }) => count >= GROWTH_FROM);
if (several.length > 1)
  console.log(
    `\ncold, 1 vector, from ${several[0]?.count} containers on: processor time grows as containers to the power ${growth(several).toFixed(2)}`,
  );
