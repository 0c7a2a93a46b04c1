import type { Scheme } from "@cornerway/schema";
import { assessStrength } from "../src/assess-strength.ts";
import { assess } from "../src/assess.ts";
import { strength } from "../src/strength.ts";
import { onPadsByHand, ordinarySchemes, withBothEnds } from "../test/strength/ordinary-schemes/ordinary-schemes.ts";
import { whyOf, whys, whysOfMark, whysOfUnit, type Judged, type Reason, type Why } from "./support/left-to-engineer.ts";

/**
 * What of twenty ordinary schemes is left to the engineer, and why. Twice: as drawn, doors left as doors, which carry nothing; and
 * with doors welded shut, so that both ends are walls; either on pads sized by hand statics. Two readings, both printed. By mark: of all marks the product makes, those that
 * need the engineer, and of these those for what is not implemented, which is the share that has to stay the exception. By unit:
 * of all containers, those whose strength needs the engineer, for whatever cause.
 */
type Left = { all: number; left: number; readonly by: Map<Why, number> };

const HEAD = [
  "by mark: every mark of the product; left: those that need the engineer; a mark may be left for several causes",
  "by unit: every container; left: those whose strength needs the engineer and does not refuse it",
  "not implemented: not covered, beyond a safe bound or refused; the code asks: a table's cap, a condition or a limit of a clause",
];
console.log(HEAD.join("\n"));
report("as drawn, doors left as doors", onPadsByHand);
report("doors welded shut", withBothEnds);

function report(title: string, asDrawn: (scheme: Scheme) => Scheme): void {
  console.log(`\n== ${title}`);
  const [marks, units] = [nothing(), nothing()];
  const causes = new Map<string, Set<string>>();
  for (const [name, scheme] of Object.entries(ordinarySchemes)) {
    const { answer, base, assessment } = judged(name, asDrawn(scheme));
    for (const mark of assessment.marks) {
      const left = mark.verdict === "needs the engineer";
      count(marks, left ? whysOfMark(mark, base.marks, answer) : undefined);
    }
    for (const unit of answer.units) {
      const left = unit.verdict === "needs the engineer";
      count(units, left ? whysOfUnit(unit, answer) : undefined);
      console.log(
        `  ${unit.unitId}: ${unit.verdict}${unit.reasons.map((one) => `\n      ${told(one, answer)}`).join("")}`,
      );
      if (!left) continue;
      for (const reason of unit.reasons) {
        const cause = causeOf(reason, answer);
        causes.set(cause, (causes.get(cause) ?? new Set()).add(`${name}, ${unit.unitId}`));
      }
    }
  }
  console.log(`-- ${title}`);
  printShare("marks", marks);
  printShare("units", units);
  console.log("units left, by cause:");
  for (const [cause, where] of [...causes].sort(([, a], [, b]) => b.size - a.size))
    console.log(`  ${where.size}: ${cause}`);
}

function judged(name: string, scheme: Scheme) {
  const cpu = process.cpuUsage();
  const answer = strength(scheme);
  const { user, system } = process.cpuUsage(cpu);
  console.log(`${name}: ${((user + system) / 1e3).toFixed(0)} ms`);
  if (!answer.accepted) throw new Error(`${name} is refused`);
  const { assessment } = assessStrength(scheme, undefined, () => answer);
  return { answer, base: assess(scheme), assessment };
}

function nothing(): Left {
  return { all: 0, left: 0, by: new Map() };
}

function count(sum: Left, whysLeft: Iterable<Why> | undefined): void {
  sum.all++;
  if (whysLeft === undefined) return;
  sum.left++;
  for (const why of whysLeft) sum.by.set(why, (sum.by.get(why) ?? 0) + 1);
}

function printShare(what: string, { all, left, by }: Left): void {
  const share = (part: number): string => `${part} of ${all} (${((100 * part) / all).toFixed(0)} %)`;
  console.log(`${share(left)} ${what} need the engineer, of them`);
  for (const why of whys) console.log(`  ${share(by.get(why) ?? 0)}: ${why}`);
}

function causeOf(reason: Reason, answer: Judged): string {
  const why = whyOf(reason, answer) ?? "settled";
  if (!("partId" in reason)) return `${reason.kind} [${why}]`;
  const found = answer.results.find(({ id }) => id === reason.partId);
  const lifted = found?.place.includes("lifted") === true ? ", lifted" : "";
  const sets = reason.kind === "assumption decides" ? `: ${reason.least} to ${reason.most}` : "";
  return `${found?.element} ${found?.limitState}${lifted}, ${reason.kind}${sets} [${why}]`;
}

function told(reason: Reason, { results }: Judged): string {
  if (reason.kind === "hold not drawn") {
    const { kind, forceN, places, run } = reason.hold;
    return `${kind} ${forceN.toFixed(0)} N at ${places.join(",")} ${run}`;
  }
  if (!("partId" in reason)) return JSON.stringify(reason);
  const found = results.find(({ id }) => id === reason.partId);
  const upper = found?.upperBound === undefined ? "" : ` (upper ${found.upperBound.toFixed(2)})`;
  return `${reason.kind}: ${reason.partId} ${found?.limitState} ${(found?.utilisation ?? Infinity).toFixed(2)}${upper} ${found?.governingRun}`;
}
