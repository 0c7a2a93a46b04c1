import { readFileSync } from "node:fs";
import { applyOperations, demoCostBook, readScheme, type Mark, type RemedyList, type Scheme } from "@cornerway/schema";
import { assessedWith } from "../src/assess-strength.ts";
import { remedies } from "../src/remedies.ts";
import { hasRemedies } from "../src/remedies/ladders-of.ts";
import { knownRun, type KnownRun } from "../src/strength/known-run.ts";
import { strength } from "../src/strength.ts";

/**
 * Searches for ways to settle a mark of the demo: for each of the things marked, or of those named, the first mark that
 * something is known for; first as drawn, then of what waits for T1 to stand, once its cheapest way is drawn. Median of processor
 * time over `TIMES` searches, each with a memory of its own and handed the full run of the drawing, which a page has that shows
 * its marks, and by the clock; what that run takes; the largest memory of the process so far; changes looked at and proved.
 */
const TIMES = Number(process.env["TIMES"] ?? 1);
const named = process.argv.slice(2);

const read = readScheme(JSON.parse(readFileSync(new URL("../../../shared/demo/scheme.json", import.meta.url), "utf8")));
if (!read.ok) throw new Error("the demo is a scheme");
const asDrawn = read.scheme;
const lists = searchAll(asDrawn, named.length > 0 ? named : ["t1", "d3", "o1"]);
const [way] = lists.get("t1")?.offered ?? [];
const standing = way && drawn(asDrawn, way.operations);
if (standing !== undefined) {
  console.log("with the cheapest way of T1 drawn:");
  searchAll(standing, ["f1", "d1"]);
}

function searchAll(scheme: Scheme, wanted: readonly string[]): ReadonlyMap<string, RemedyList> {
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
    else found.set(id, report(scheme, mark.id, known));
  }
  return found;
}

function isOf({ id }: Mark, elementId: string): boolean {
  return id.split(/[:,+ ]/).includes(elementId);
}

function report(scheme: Scheme, markId: string, known: KnownRun): RemedyList {
  const runs = Array.from({ length: TIMES }, () => searched(scheme, markId, known)).toSorted(
    (a, b) => a.cpuMs - b.cpuMs,
  );
  const middle = runs[Math.floor(runs.length / 2)];
  if (middle === undefined) throw new RangeError("TIMES is one or more");
  const { list, clockMs, cpuMs, firstMs } = middle;
  const first = firstMs === undefined ? "" : `, the first way after ${seconds(firstMs)}`;
  const memoryMb = Math.round(process.resourceUsage().maxRSS / 1024);
  console.log(
    `${markId}: ${seconds(cpuMs)} of processor, ${seconds(clockMs)} by the clock${first}; ${list.looked} changes looked at, ${list.proved} proved, ${list.leftOut} left out; ${list.offered.length} offered, ${list.apart.length} apart, ${list.failed.length} fail; ${memoryMb} MB`,
  );
  return list;
}

function searched(
  scheme: Scheme,
  markId: string,
  known: KnownRun,
): { readonly list: RemedyList; readonly clockMs: number; readonly cpuMs: number; readonly firstMs?: number } {
  const [from, began] = [process.cpuUsage(), performance.now()];
  const spentMs = (): number => process.cpuUsage(from).user / 1000;
  let firstMs: number | undefined;
  const search = remedies(scheme, markId, demoCostBook, drawn, known);
  for (;;) {
    const step = search.next();
    if (step.done !== true) {
      if (step.value.kind === "found") firstMs ??= spentMs();
    } else if (step.value.accepted)
      return {
        list: step.value.list,
        clockMs: performance.now() - began,
        cpuMs: spentMs(),
        ...(firstMs !== undefined && { firstMs }),
      };
    else throw new Error("the demo's hazards are accepted");
  }
}

function drawn(tried: Scheme, operations: Parameters<typeof applyOperations>[1]): Scheme | undefined {
  const applied = applyOperations(tried, [...operations]);
  return applied.ok ? applied.scheme : undefined;
}

function seconds(ms: number): string {
  return `${(ms / 1000).toFixed(1)} s`;
}
