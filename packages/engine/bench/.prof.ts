import { readFileSync } from "node:fs";
import { readScheme } from "@cornerway/schema";
import { strength } from "../src/strength.ts";
import { sampleHazards } from "../test/codes-loads/sample-hazards.ts";
import { sampleInputs } from "../test/loads/sample-scheme.ts";
const r = readScheme(JSON.parse(readFileSync(process.argv[2]!, "utf8")));
if (!r.ok) throw 1;
const a = strength(r.scheme, {
  hazards: sampleHazards(),
  inputs: sampleInputs(),
  soil: "clay or silt",
  concreteMpa: 17.2,
});
if (a.accepted) {
  for (const x of a.results)
    console.log(
      (x.utilisation ?? Infinity).toFixed(2),
      x.id,
      "|",
      x.limitState,
      x.covered,
      x.certainty,
      JSON.stringify(x.envelope, (k, v) => (typeof v === "number" ? Math.round(v * 100) / 100 : v)),
      x.ifProved?.toFixed(2),
      x.upperBound?.toFixed(2),
      x.asDrawn?.toFixed(2),
      "|",
      x.governingRun,
    );
  console.log(JSON.stringify(a.units, null, 1));
  console.log(a.holds);
  console.log(JSON.stringify(a).length);
  const rail = a.results.find((x) => x.id === "u1 bottom side rail right");
  console.log(
    JSON.stringify(rail?.working?.symbols.map((s) => [s.symbol, s.value])),
    JSON.stringify(rail?.working?.steps.map((s) => (s.kind === "value" ? [s.symbol, s.result] : 0))),
    JSON.stringify(rail?.working?.parts.map((s) => [s.title, s.result])),
  );
  const post = a.results.find((x) => x.element.endsWith("post"));
  console.log(
    JSON.stringify(post?.working?.symbols.map((s) => [s.symbol, s.value])),
    JSON.stringify(post?.working?.parts.map((s) => [s.title, s.result])),
  );
}
if (a.accepted)
  for (const id of ["u1 sill door", "u1 sill front", "u1 front corner post left"]) {
    const x = a.results.find((x) => x.id === id);
    console.log(
      id,
      JSON.stringify(x?.working?.symbols.map((s) => [s.symbol, s.value])),
      JSON.stringify(x?.working?.parts.map((s) => [s.title, s.result])),
    );
  }
