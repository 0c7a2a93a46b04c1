import { readFileSync } from "node:fs";
import {
  applyOperations,
  demoCostBook,
  readScheme,
  type Mark,
  type RemedyList,
  type RemedyStep,
  type Scheme,
} from "@cornerway/schema";
import { assessedWith } from "../src/assess-strength.ts";
import { remedySearchShared } from "../src/remedies.ts";
import { hasRemedies } from "../src/remedies/ladders-of.ts";
import { knownRun, type KnownRun } from "../src/strength/known-run.ts";
import type { RemedyAnswer } from "../src/remedies/remedies-of.ts";
import { runShared } from "../src/strength/run-shared.ts";
import { strength } from "../src/strength.ts";
import { startHelper } from "./support/start-helper.ts";

/**
 * Searches for ways to settle a mark of the demo: for each of the things marked, or of those named, the first mark that
 * something is known for; first as drawn, then of what waits for T1 to stand, once its cheapest way is drawn. Each is handed the
 * full run of the drawing, which a page that shows its marks has, begins with nothing else at hand but code that ran before, and is
 * shared with one helper, as on two cores; the middle of `TIMES` searches by the clock, which is what is held against the limits,
 * with processor time of all threads; what the run that is handed on takes; the largest memory of the process so far; changes
 * looked at and proved.
 */
const TIMES = Number(process.env["TIMES"] ?? 1);
/** The first way, and the whole list, s by the clock. */
const [MOST_FIRST_S, MOST_S] = [3, 6];
const named = process.argv.slice(2);

const read = readScheme(JSON.parse(readFileSync(new URL("../../../shared/demo/scheme.json", import.meta.url), "utf8")));
if (!read.ok) throw new Error("the demo is a scheme");
const asDrawn = read.scheme;
const { helper, forget, end } = startHelper();
const lists = await searchAll(asDrawn, named.length > 0 ? named : ["t1", "d3", "o1"]);
const [way] = lists.get("t1")?.offered ?? [];
const standing = way && drawn(asDrawn, way.operations);
if (standing !== undefined) {
  console.log("with the cheapest way of T1 drawn:");
  await searchAll(standing, ["f1", "d1"]);
}
await end();

async function searchAll(scheme: Scheme, wanted: readonly string[]): Promise<ReadonlyMap<string, RemedyList>> {
  const from = process.cpuUsage();
  const said = strength(scheme);
  console.log(`the full run that is handed on: ${seconds(process.cpuUsage(from).user / 1000)} of processor`);
  const known = knownRun(scheme, said);
  const marks = assessedWith(scheme, said).assessment.marks.filter(
    ({ verdict, fact: { kind } }) =>
      verdict !== "works as built" && verdict !== "works with steel" && hasRemedies(kind),
  );
  const found = new Map<string, RemedyList>();
  for (const id of wanted) {
    const mark = marks.find((one) => isOf(one, id));
    if (mark === undefined) console.log(`${id}: no mark that something is known for`);
    else found.set(id, await report(scheme, mark.id, known));
  }
  return found;
}

function isOf({ id }: Mark, elementId: string): boolean {
  return id.split(/[:,+ ]/).includes(elementId);
}

async function report(scheme: Scheme, markId: string, known: KnownRun): Promise<RemedyList> {
  const runs: Searched[] = [];
  for (let time = 0; time < TIMES; time++) runs.push(await searched(scheme, markId, known));
  const middle = runs.toSorted((a, b) => a.clockMs - b.clockMs)[Math.floor(runs.length / 2)];
  if (middle === undefined) throw new RangeError("TIMES is one or more");
  const { list, clockMs, cpuMs, firstMs } = middle;
  const first = firstMs === undefined ? "" : `, the first way after ${seconds(firstMs)} of ${MOST_FIRST_S} s`;
  const memoryMb = Math.round(process.resourceUsage().maxRSS / 1024);
  console.log(
    `${markId}: ${seconds(clockMs)} by the clock of ${MOST_S} s${first}; ${seconds(cpuMs)} of processor; ${list.looked} changes looked at, ${list.proved} proved, ${list.leftOut} left out; ${list.offered.length} offered, ${list.apart.length} apart, ${list.failed.length} fail; ${memoryMb} MB`,
  );
  if (clockMs > MOST_S * 1000 || (firstMs ?? 0) > MOST_FIRST_S * 1000) process.exitCode = 1;
  return list;
}

type Searched = {
  readonly list: RemedyList;
  readonly clockMs: number;
  readonly cpuMs: number;
  readonly firstMs?: number;
};

async function searched(scheme: Scheme, markId: string, known: KnownRun): Promise<Searched> {
  forget();
  const [from, began] = [process.cpuUsage(), performance.now()];
  let firstMs: number | undefined;
  const hear = ({ kind }: RemedyStep) => {
    if (kind === "found") firstMs ??= performance.now() - began;
  };
  const work = remedySearchShared(drawn)({ scheme, markId, book: demoCostBook, known, helping: 1 }, hear);
  const answer = await new Promise<RemedyAnswer>((settle, fail) => runShared(work, [helper], { settle, fail }));
  if (!answer.accepted) throw new Error("the demo's hazards are accepted");
  const [clockMs, cpuMs] = [performance.now() - began, process.cpuUsage(from).user / 1000];
  return { list: answer.list, clockMs, cpuMs, ...(firstMs !== undefined && { firstMs }) };
}

function drawn(tried: Scheme, operations: Parameters<typeof applyOperations>[1]): Scheme | undefined {
  const applied = applyOperations(tried, [...operations]);
  return applied.ok ? applied.scheme : undefined;
}

function seconds(ms: number): string {
  return `${(ms / 1000).toFixed(1)} s`;
}
