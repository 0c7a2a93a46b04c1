import { strength } from "../src/strength.ts";
import { ordinarySchemes, withBothEnds } from "../test/strength/ordinary-schemes/ordinary-schemes.ts";

/**
 * Verdict by unit of twenty ordinary schemes, why, and the share that is left to the engineer, by cause: as drawn, and with
 * `--both-ends` after the remedies their lateral system asks for first.
 */
const remedied = process.argv.includes("--both-ends");
const causes = new Map<string, number>();
let [units, left] = [0, 0];
for (const [name, drawn] of Object.entries(ordinarySchemes)) {
  const scheme = remedied ? withBothEnds(drawn) : drawn;
  const cpu = process.cpuUsage();
  const answer = strength(scheme);
  const { user, system } = process.cpuUsage(cpu);
  console.log(`${name}: ${((user + system) / 1e3).toFixed(0)} ms`);
  if (!answer.accepted) continue;
  for (const { unitId, verdict, reasons } of answer.units) {
    units++;
    if (verdict === "needs the engineer") left++;
    const why = reasons.map((reason) => {
      if (reason.kind === "hold not drawn")
        return `${reason.hold.kind} ${reason.hold.forceN.toFixed(0)} N at ${reason.hold.places.join(",")} ${reason.hold.run}`;
      if ("partId" in reason) {
        const found = answer.results.find(({ id }) => id === reason.partId);
        return `${reason.kind}: ${reason.partId} ${found?.limitState} ${(found?.utilisation ?? Infinity).toFixed(2)}${found?.upperBound === undefined ? "" : ` (upper ${found.upperBound.toFixed(2)})`} ${found?.governingRun}`;
      }
      return JSON.stringify(reason);
    });
    if (verdict === "needs the engineer") for (const { kind } of reasons) causes.set(kind, (causes.get(kind) ?? 0) + 1);
    console.log(`  ${unitId}: ${verdict}${why.map((one) => `\n      ${one}`).join("")}`);
  }
}
console.log(`${left} of ${units} units are left to the engineer; causes: ${JSON.stringify([...causes])}`);
