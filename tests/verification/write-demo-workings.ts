// `npm run verify`: writes the verdicts of the demo and three whole workings beside the manual.
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { assessStrength, engineVersion } from "@cornerway/engine";
import { cautions, elementNames, inTags, markSentences, Scheme, type CheckWorking, type Mark } from "@cornerway/schema";

// Verdicts of the demo with their envelope, and three of its marks with the whole working of the part each tells first: the
// fullest part beyond its strength, the fullest left open, and the fullest of a unit that is within. Printed as they are, so
// that they can be redone by hand.
const at = (name: string) => fileURLToPath(new URL(`../../shared/${name}`, import.meta.url));
const scheme = Scheme.parse(JSON.parse(readFileSync(at("demo/scheme.json"), "utf8")));
const answer = assessStrength(scheme);
if (!answer.accepted) throw new Error("hazards of the demo are refused");
const { assessment, proof } = answer;
const names = elementNames(scheme);
const workings = new Map(proof.workings.map(({ id, working }) => [id, working]));
const figure = (value: number): string => String(Number(value.toPrecision(5)));

const partsOf = ({ fact }: Mark) => {
  if (fact.kind === "strength-adequate") return [fact.governing];
  return fact.kind === "overstressed" || fact.kind === "strength-open" ? fact.parts : [];
};

/** The fullest mark of a kind whose first part has a working. */
function fullest(kind: Mark["fact"]["kind"]): { mark: Mark; working: CheckWorking } {
  const found = assessment.marks
    .filter((mark) => mark.fact.kind === kind)
    .flatMap((mark) => {
      const [part] = partsOf(mark);
      const working = part === undefined ? undefined : workings.get(part.partId);
      return working === undefined ? [] : [{ mark, working }];
    });
  const [first, ...rest] = found;
  if (first === undefined) throw new Error(`the demo has no ${kind} with a working`);
  return rest.reduce(
    (most, next) => ((next.working.utilisation ?? 0) > (most.working.utilisation ?? 0) ? next : most),
    first,
  );
}

function workingLines(working: CheckWorking, depth = 4): string[] {
  const { title, clause, symbols, steps, notes, parts } = working;
  return [
    `${"#".repeat(depth)} ${title} (${clause.document} ${clause.edition}, ${clause.place}; ${clause.certainty})`,
    "",
    ...symbols.map(
      ({ symbol, value, unit, meaning, certainty }) =>
        `- ${symbol} = ${figure(value)} ${unit}: ${meaning}, ${certainty}`,
    ),
    "",
    ...steps.map((step) =>
      step.kind === "value"
        ? `- ${step.symbol} = ${step.formula} = ${step.substituted} = **${figure(step.result)} ${step.unit}** ${step.place ?? ""}`.trimEnd()
        : `- ${step.left} ${step.relation} ${step.right}: ${figure(step.leftValue)} against ${figure(step.rightValue)}, ${step.holds ? "holds" : "does not hold"}`,
    ),
    ...notes.map((note) => `- ${note}`),
    ...(working.utilisation === undefined ? [] : ["", `Utilisation **${figure(working.utilisation)}**.`]),
    "",
    ...alikeOnce(parts).flatMap((part) => workingLines(part, Math.min(depth + 1, 6))),
  ];
}

/** Two strengths that are worked out alike are told once. */
const alikeOnce = (parts: CheckWorking["parts"]): CheckWorking["parts"] =>
  parts.filter((part, n) => parts.findIndex((other) => JSON.stringify(other) === JSON.stringify(part)) === n);

const told = (["overstressed", "strength-open", "strength-adequate"] as const).map(fullest);
const { strength } = assessment;
const text = [
  "# Verdicts of the demo, and three of its marks with their whole working",
  "",
  `\`shared/demo/scheme.json\`, engine ${engineVersion}, ${assessment.scope}; ${strength?.checks} checks over ${strength?.vectors} load vectors.`,
  "Written by `tests/verification/write-demo-workings.ts`. Screening: an engineer judges it.",
  "",
  "| unit | verdict | fullest part with a number | least to most over the envelope |",
  "| --- | --- | --- | --- |",
  ...assessment.units.map(({ id: unitId, verdict }) => {
    const own = proof.report.results.filter(({ ownerId, utilisation }) => ownerId === unitId && utilisation !== null);
    const worst = own.toSorted((a, b) => (b.utilisation ?? 0) - (a.utilisation ?? 0))[0];
    const known = (worst?.envelope ?? []).flatMap(({ utilisation }) => (utilisation === null ? [] : [utilisation]));
    const span = known.length === 0 ? "" : `${Math.min(...known).toFixed(2)} to ${Math.max(...known).toFixed(2)}`;
    const part =
      worst === undefined
        ? ""
        : `${worst.part} ${inTags(worst.place, names)}: ${worst.check} ${worst.utilisation?.toFixed(2)}`;
    return `| ${names.get(unitId) ?? unitId} | ${verdict} | ${part} | ${span} |`;
  }),
  "",
  "| assumptions | runs | without equilibrium as drawn |",
  "| --- | --- | --- |",
  ...(strength?.envelope ?? []).map(
    ({ assumptions, runs, withoutEquilibrium }) => `| ${assumptions} | ${runs} | ${withoutEquilibrium} |`,
  ),
  "",
  ...told.flatMap(({ mark, working }, n) => {
    const [part] = partsOf(mark);
    const result = proof.report.results.find(({ id }) => id === part?.partId);
    return [
      `## ${n + 1}. ${mark.verdict}`,
      "",
      markSentences(mark, names, "engineer").body,
      "",
      `Governing run: ${inTags(result?.run ?? "", names)}; ${result?.assumptions}. Envelope: ${(result?.envelope ?? [])
        .map(({ assumptions, utilisation }) => `${assumptions} ${utilisation?.toFixed(2) ?? "not stated"}`)
        .join(", ")}.`,
      "",
      ...workingLines(working),
    ];
  }),
  ...cautions.map((caution) => `- ${caution}`),
  "",
].join("\n");
const printed = new URL("../../test-results/verification/", import.meta.url);
mkdirSync(printed, { recursive: true });
writeFileSync(new URL("demo-workings.md", printed), text);
process.stdout.write("demo-workings.md, the demo with three whole workings, is beside them\n");
