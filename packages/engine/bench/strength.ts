import { readScheme, type Scheme } from "@cornerway/schema";
import { readFileSync } from "node:fs";
import type { SiteHazards } from "../src/loads/site-hazards.ts";
import { strengthWhileDrawing } from "../src/strength-while-drawing.ts";
import type { LiveStrength } from "../src/strength/live-strength.ts";
import { runShared } from "../src/strength/run-shared.ts";
import type { Strength } from "../src/strength/strength-of.ts";
import { startHelper } from "./support/start-helper.ts";
import { stackedScheme } from "./support/stacked-building.ts";

/**
 * Full runs and live answers after an edit, with vectors and checks: of the demo under gravity alone and under hazards of no
 * particular place, then of stacks, or of the schemes in the files named. `STACKS=64,256` names other stacks, `PARTS=20`
 * prints so many of the worst parts.
 *
 * The thread of somebody who draws has run before, so the code of nine containers is warm there and nothing of a drawing
 * that is new is at hand: limits of nine containers are held against that, by the clock. What the first run of a scheme
 * takes stands beside it, and processor time, which counts what the engine's own threads do meanwhile. The limits of full
 * runs are held against the run shared with one helper, as on two cores, by the clock; it must say what one thread says.
 */
const PARTS = Number(process.env["PARTS"] ?? 0);
const [RUNS_BEFORE, EDITS_BEFORE, EDITS] = [3, 15, 11];
/** For nine containers and for 64, s; for a live answer, ms. */
const [MOST_OF_DEMO_S, MOST_OF_64_S, MOST_LIVE_MS] = [2, 15, 50];

const files = process.argv.slice(2);
const { helper, forget, end } = startHelper();
if (files.length > 0) for (const file of files) await report(file, underHazards(schemeIn(file)));
else {
  const demo = schemeIn("../../../shared/demo/scheme.json");
  await report("demo, gravity loads", demo, { mostS: MOST_OF_DEMO_S, runsBefore: RUNS_BEFORE });
  await report("demo, all loads", underHazards(demo), { mostS: MOST_OF_DEMO_S, runsBefore: RUNS_BEFORE });
  for (const count of (process.env["STACKS"] ?? "64").split(",").filter(Boolean).map(Number))
    await report(`stack of ${count}, all loads`, underHazards(stackedScheme(count)), {
      mostS: count === 64 ? MOST_OF_64_S : Infinity,
    });
}
await end();

interface Timed<T> {
  readonly result: T;
  readonly wallMs: number;
  readonly cpuMs: number;
}

async function timed<T>(work: () => T | Promise<T>): Promise<Timed<T>> {
  const [wall, cpu] = [performance.now(), process.cpuUsage()];
  const result = await work();
  const { user, system } = process.cpuUsage(cpu);
  return { result, wallMs: performance.now() - wall, cpuMs: (user + system) / 1000 };
}

type Limit = { readonly mostS?: number; readonly runsBefore?: number };

/** `runsBefore`: so many runs with nothing at hand come before the one that is held against its limit. */
async function report(name: string, scheme: Scheme, { mostS = Infinity, runsBefore = 0 }: Limit = {}): Promise<void> {
  const before: Timed<Strength>[] = [];
  for (let n = 0; n < runsBefore; n++) {
    before.push(await timed(() => strengthWhileDrawing().full(scheme)));
    await shared(scheme);
  }
  const { full, live } = strengthWhileDrawing();
  const whole = await timed(() => full(scheme));
  const answer = whole.result;
  if (!answer.accepted) return console.log(`${name}: hazards refused`);
  console.log(`${name}: ${scheme.containers.length} containers, ${answer.vectors} vectors, ${answer.checks} checks`);
  const [first] = before;
  if (first !== undefined) console.log(`  one thread, the first time: ${seconds(first)}`);
  console.log(`  one thread, with nothing at hand but code that ran before: ${seconds(whole)}`);
  await reportShared(scheme, whole.result, mostS);
  for (let n = 1; n <= EDITS_BEFORE; n++) live(edited(scheme, EDITS + n));
  const edits: Timed<LiveStrength>[] = [];
  for (let n = 1; n <= EDITS; n++) edits.push(await timed(() => live(edited(scheme, n))));
  const [middle] = edits.toSorted((a, b) => a.wallMs - b.wallMs).slice(Math.floor(EDITS / 2));
  if (middle?.result.accepted) {
    const { vectors, checks, notLooked } = middle.result;
    console.log(
      `  live after an edit, median of ${EDITS}: ${vectors} vectors, ${checks} checks, ${notLooked} vectors wait; ${middle.wallMs.toFixed(0)} ms by the clock (${middle.cpuMs.toFixed(0)} ms of processor) of ${MOST_LIVE_MS} ms`,
    );
    if (middle.wallMs > MOST_LIVE_MS) process.exitCode = 1;
  }
  if (PARTS > 0) print(answer);
}

/** Shared with one helper, with nothing at hand in either thread but code that ran before. */
function shared(scheme: Scheme): Promise<Strength> {
  forget();
  const work = strengthWhileDrawing().fullShared(scheme, 1);
  return new Promise((settle, fail) => runShared(work, [helper], { settle, fail }));
}

async function reportShared(scheme: Scheme, alone: Strength, mostS: number): Promise<void> {
  const whole = await timed(() => shared(scheme));
  const same = JSON.stringify(whole.result) === JSON.stringify(alone);
  console.log(
    `  shared with one helper: ${seconds(whole)}, of ${mostS} s by the clock; ${same ? "the same answer to the bit" : "ANOTHER ANSWER"}`,
  );
  if (whole.wallMs / 1000 > mostS || !same) process.exitCode = 1;
}

function seconds({ wallMs, cpuMs }: Timed<unknown>): string {
  return `${(wallMs / 1000).toFixed(2)} s by the clock (${(cpuMs / 1000).toFixed(2)} s of processor)`;
}

/** The first opening a centimetre farther on. */
function edited(scheme: Scheme, step: number): Scheme {
  const [first, ...others] = scheme.openings;
  if (first === undefined) return scheme;
  return { ...scheme, openings: [{ ...first, offsetUm: first.offsetUm + 10_000 * step }, ...others] };
}

function print(answer: Extract<Strength, { accepted: true }>): void {
  for (const set of answer.envelope) console.log(JSON.stringify(set));
  console.log(`${answer.results.length} parts, worst residual ${answer.worstResidual.toExponential(1)}`);
  for (const { id, limitState, utilisation, refused, assumptions, governingRun, held, covered } of answer.results.slice(
    0,
    PARTS,
  ))
    console.log(
      `  ${(utilisation ?? Infinity).toFixed(2)}  ${id}: ${limitState}${refused === undefined ? "" : `, ${refused}`} [${covered}${held.length > 0 ? `, if ${held.join(" ")} held` : ""}] ${assumptions}; ${governingRun}`,
    );
  for (const { unitId, verdict, reasons } of answer.units)
    console.log(`  ${unitId}: ${verdict} (${reasons.map(({ kind }) => kind).join("; ")})`);
}

function schemeIn(file: string): Scheme {
  const reading = readScheme(JSON.parse(readFileSync(new URL(file, import.meta.url), "utf8")));
  if (!reading.ok) throw new Error(`${file} is not a scheme`);
  return reading.scheme;
}

function underHazards(scheme: Scheme): Scheme {
  return { ...scheme, basis: { ...scheme.basis, hazards: hazards(scheme.site.edition) } };
}

/** 115 mph in exposure C, 20 psf of ground snow, S_S 1.0 and S_1 0.4 on class D. */
function hazards(edition: SiteHazards["wind"]["edition"]): SiteHazards {
  const later = edition === "IBC 2024";
  return {
    riskCategory: "II",
    wind: { edition, speedMs: 51.4, exposure: "C", elevationM: 0, topographicFactor: 1 },
    snow: {
      edition,
      groundPa: 958,
      roofExposure: "partially exposed",
      thermal: "heated",
      ...(later ? { winterWind: 0.45 } : {}),
    },
    seismic: {
      edition,
      ss: 1,
      s1: 0.4,
      siteClass: "D",
      longPeriodS: 8,
      ...(later ? { siteValues: { sms: 1.1, sm1: 0.76 } } : {}),
    },
  };
}
