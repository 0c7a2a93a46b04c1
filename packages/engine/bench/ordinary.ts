import type { Scheme } from "@cornerway/schema";
import { strength, type Strength } from "../src/strength.ts";
import { ordinarySchemes, withBothEnds } from "../test/strength/ordinary-schemes/ordinary-schemes.ts";

/**
 * Verdict by unit of twenty ordinary schemes, why, and the share that is left to the engineer, by cause. Twice: as drawn, doors
 * left as doors, which carry nothing, on pads of 1.2 × 1.2 × 0.4 m whatever stands on them; and as an architect draws them
 * who knows the two things a container on its own corners asks for: doors welded shut, so that both ends are walls, and pads
 * of 1.6 × 1.6 × 0.8 m, heavy enough for what two bare storeys pull in the wind.
 */
type Judged = Extract<Strength, { accepted: true }>;
type Reason = Judged["units"][number]["reasons"][number];

report("as drawn, doors left as doors", (scheme) => scheme);
report("doors welded shut, heavier pads", withBothEnds);

function report(title: string, asDrawn: (scheme: Scheme) => Scheme): void {
  console.log(`== ${title}`);
  const causes = new Map<string, Set<string>>();
  let [units, left] = [0, 0];
  for (const [name, scheme] of Object.entries(ordinarySchemes)) {
    const cpu = process.cpuUsage();
    const answer = strength(asDrawn(scheme));
    const { user, system } = process.cpuUsage(cpu);
    console.log(`${name}: ${((user + system) / 1e3).toFixed(0)} ms`);
    if (!answer.accepted) throw new Error(`${name} is refused`);
    units += answer.units.length;
    for (const { unitId, verdict, reasons } of answer.units) {
      console.log(`  ${unitId}: ${verdict}${reasons.map((one) => `\n      ${told(one, answer)}`).join("")}`);
      if (verdict !== "needs the engineer") continue;
      left++;
      for (const reason of reasons) {
        const cause = causeOf(reason, answer);
        causes.set(cause, (causes.get(cause) ?? new Set()).add(`${name}, ${unitId}`));
      }
    }
  }
  console.log(`${left} of ${units} units are left to the engineer (${((100 * left) / units).toFixed(0)} %), by cause:`);
  for (const [cause, where] of [...causes].sort(([, a], [, b]) => b.size - a.size))
    console.log(`  ${where.size} ${where.size === 1 ? "unit" : "units"}: ${cause}`);
}

function causeOf(reason: Reason, { results }: Judged): string {
  if (!("partId" in reason)) return reason.kind;
  const found = results.find(({ id }) => id === reason.partId);
  const lifted = found?.place.includes("lifted") === true ? ", lifted" : "";
  return `${found?.element} ${found?.limitState}${lifted}, ${reason.kind}${reason.kind === "assumption decides" ? `: ${reason.least} to ${reason.most}` : ""}`;
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
