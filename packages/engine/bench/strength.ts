import { readScheme, type Scheme } from "@cornerway/schema";
import { readFileSync } from "node:fs";
import type { SiteHazards } from "../src/loads/site-hazards.ts";
import { strength } from "../src/strength.ts";
import type { Strength } from "../src/strength/strength-of.ts";

/** Time, runs, checks and the ten worst parts of a scheme under hazards of no particular place. */
const files = process.argv.slice(2);
for (const file of files.length > 0 ? files : ["../../../shared/demo/scheme.json"]) report(file);

function report(file: string): void {
  const scheme = schemeIn(file);
  const wall = performance.now();
  const processor = process.cpuUsage();
  const answer = strength({ ...scheme, basis: { ...scheme.basis, hazards: hazards(scheme.site.edition) } });
  const { user, system } = process.cpuUsage(processor);
  console.log(
    `${file}: ${scheme.containers.length} containers, ${((user + system) / 1e6).toFixed(1)} s of processor, ${((performance.now() - wall) / 1e3).toFixed(1)} s by the clock`,
  );
  if (answer.accepted) print(answer);
}

function print(answer: Extract<Strength, { accepted: true }>): void {
  for (const set of answer.envelope) console.log(JSON.stringify(set));
  console.log(`${answer.results.length} parts, worst residual ${answer.worstResidual.toExponential(1)}`);
  for (const { id, limitState, utilisation, refused, assumptions, governingRun, held, covered } of answer.results.slice(
    0,
    10,
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
