import { priceSteps } from "../../packages/engine/src/price-step.ts";
import { randomTrial } from "../../packages/engine/test/chart/random-schemes.ts";
import { stepsOf } from "../../packages/engine/test/chart/steps-of.ts";

/** COUNT seeded random schemes from SEED on: the chart's price step is never cheaper than the full analysis says. */
const COUNT = Number(process.env["COUNT"] ?? 300);
const SEED = Number(process.env["SEED"] ?? 1);

const verdicts = new Map<string, number>();
const steps = new Map<string, number>();
const cheaper: string[] = [];
let [dearer, withOverhang] = [0, 0];
const count = (map: Map<string, number>, key: string): void => void map.set(key, (map.get(key) ?? 0) + 1);

for (let seed = SEED; seed < SEED + COUNT; seed++) {
  const tried = randomTrial(seed);
  const { chart, full, verdict } = stepsOf(tried);
  count(verdicts, verdict);
  count(steps, `${priceSteps[chart] ?? "no price"} by the chart, ${priceSteps[full] ?? "no price"} in full`);
  if (tried.hasOverhang) withOverhang++;
  if (chart > full) dearer++;
  if (chart < full)
    cheaper.push(`seed ${seed}: ${priceSteps[chart] ?? ""} by the chart, ${priceSteps[full] ?? ""} in full`);
}

const share = (n: number): string => `${n} (${((100 * n) / COUNT).toFixed(0)} %)`;
console.log(`${COUNT} schemes from seed ${SEED}, ${withOverhang} with an opening and an overhang together`);
for (const [verdict, n] of verdicts) console.log(`  ${verdict}: ${share(n)}`);
for (const [pair, n] of steps) console.log(`  ${pair}: ${share(n)}`);
console.log(`dearer by the chart: ${dearer}; cheaper: ${cheaper.length}`);
for (const line of cheaper) console.log(`  ${line}`);

/** What a sample of three hundred has to hold of each verdict, and of openings with an overhang, to say anything. */
const LEAST_SHARE = 0.15;
const LEAST_WITH_OVERHANG = COUNT / 3;
const rare = ["works as built", "works with steel", "needs the engineer", "does not work"].filter(
  (verdict) => (verdicts.get(verdict) ?? 0) < LEAST_SHARE * COUNT,
);
if (rare.length > 0) console.log(`less than ${100 * LEAST_SHARE} %: ${rare.join(", ")}`);
if (cheaper.length > 0 || rare.length > 0 || withOverhang < LEAST_WITH_OVERHANG) process.exitCode = 1;
